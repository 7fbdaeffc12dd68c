import { RaykettleSizer } from "./sizer.ts";

if (!customElements.get("raykettle-sizer")) customElements.define("raykettle-sizer", RaykettleSizer);

export type { Catalogue, DishItem, PlaceItem, TankItem } from "./catalogue.ts";
export { RaykettleSizer };
