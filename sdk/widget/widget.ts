import { RaykettleSizer } from "./sizer.ts";

if (!customElements.get("raykettle-sizer")) customElements.define("raykettle-sizer", RaykettleSizer);

export { RaykettleSizer };
