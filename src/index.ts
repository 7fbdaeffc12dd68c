// The public surface of the computation: all that the HTTP edge may use. SI throughout; times are unix seconds.

export type { Build, Caution, DayAir, Quantity } from "./cautions/caution.ts";
export { cautionsOf } from "./cautions/cautions.ts";
export { CAUTION_CODES } from "./cautions/codes.ts";
export { dishCautions } from "./cautions/dish-cautions.ts";
export type { InstantWalls } from "./cautions/instant.ts";
export { instantCautions } from "./cautions/instant-cautions.ts";
export { loopCautions } from "./cautions/loop-cautions.ts";
export { receiverCautions } from "./cautions/receiver-cautions.ts";
export { tankCautions } from "./cautions/tank-cautions.ts";
export type { Coil } from "./coil/coil.ts";
export { coilFits, type Vessel } from "./coil/geometry.ts";
export type { Assumption, SizeSubject, TimeSubject } from "./design/assumption.ts";
export { coilBand, designCoil, type SparseCoil } from "./design/coil.ts";
export {
	designDish,
	mirrorWidth,
	RIM_ANGLE_SOURCE,
	type SparseDish,
	USUAL_RIM_ANGLE,
} from "./design/dish.ts";
export {
	derived,
	type Grounds,
	handbook,
	lookedUp,
	measured,
	practice,
	standard,
	unconfirmed,
} from "./design/grounds.ts";
export { designLoop, type SparseLoop } from "./design/loop.ts";
export { designPlant, type SparsePlant } from "./design/plant.ts";
export { designReceiver, designReceiverInLight } from "./design/receiver.ts";
export { designRun, designWindow, type Span, type Window } from "./design/run.ts";
export { designMeasuredSky } from "./design/sky.ts";
export { type SparseReceiver, type SparseTubeReceiver, statedAbsorber } from "./design/sparse-receiver.ts";
export { designTank, type SparseTank, tankBoilingPoint } from "./design/tank.ts";
export { designVessel, type SparseVessel } from "./design/vessel.ts";
export {
	flatReceiverConcentration,
	sphericalReceiverConcentration,
	thermodynamicConcentrationLimit,
} from "./dish/concentration-limit.ts";
export type { Dish } from "./dish/dish.ts";
export { focalPeakIrradiance, focalSpotCircles } from "./dish/focal-spot.ts";
export { lightCone } from "./dish/light-cone.ts";
export { apertureMethod, dishMethods } from "./dish/methods.ts";
export { apertureArea, type DishOptics, dishOptics, reflectedShare } from "./dish/optics.ts";
export { depth, rimAngle } from "./dish/paraboloid.ts";
export { type DomainCode, DomainError, type Subject } from "./errors.ts";
export { FLUID_IDS, type FluidId, fluidById } from "./fluids/catalogue.ts";
export type { Fluid } from "./fluids/fluid.ts";
export { fluidMethods } from "./fluids/methods.ts";
export { evenTemperatures, propertyTable } from "./fluids/property-table.ts";
export { saturationPressure } from "./fluids/saturation.ts";
export { type Insulation, insulationConductivity } from "./heat/insulation.ts";
export { INSULATION_MATERIALS, type InsulationId } from "./heat/insulation-materials.ts";
export { WALL_MATERIALS, type WallMaterialId } from "./heat/wall-materials.ts";
export type { Idle } from "./improvements/changed.ts";
export { type Ahead, type GainRange, rangedGains } from "./improvements/ranged-gains.ts";
export { daySensitivity, type Gain, type Improvement, worthOrder } from "./improvements/sensitivity.ts";
export { IMPROVEMENTS, type ImprovementId, type Steps } from "./improvements/steps.ts";
export type { Conditions } from "./instant/conditions.ts";
export { type Heater, heaterOf } from "./instant/heater.ts";
export type { InstantHours } from "./instant/hours.ts";
export type { NeededAperture } from "./instant/needed-aperture.ts";
export type { OilVessel } from "./instant/oil-vessel.ts";
export { type InstantOutcome, instantOutcome, type LevelRow } from "./instant/outcome.ts";
export type { InstantRow } from "./instant/row.ts";
export type { ServedUse } from "./instant/served-uses.ts";
export type { Arrangement, InstantDay, InstantTask } from "./instant/task.ts";
export type { InstantReason } from "./instant/verdict.ts";
export type { ChargedDraw } from "./instant/vessel-charge.ts";
export { type ColdStart, coldStart } from "./loop/cold-start.ts";
export { type FurtherTube, furtherSegment } from "./loop/further-tube.ts";
export type { InsulationQuestions } from "./loop/insulation-effects.ts";
export type { Loop, Pipe } from "./loop/loop.ts";
export { type LoopConditions, type LoopLosses, loopLosses, type RunLosses } from "./loop/losses.ts";
export { loopMethods } from "./loop/methods.ts";
export type { Method } from "./methods.ts";
export { loopContent } from "./plant/content.ts";
export { warmUpDay } from "./plant/day.ts";
export { AS_CORRELATED } from "./plant/factors.ts";
export type { DayOutcome, EnergyBalance, Shortfall } from "./plant/outcome.ts";
export type { Plant, Task } from "./plant/plant.ts";
export { stepTimes } from "./plant/times.ts";
export type { Basis, Provenance } from "./provenance.ts";
export { receiverAbsorptance } from "./receiver/absorption.ts";
export { type ApertureSetting, apertureTrade, tradeMethods } from "./receiver/aperture-trade.ts";
export { stagnationTemperature } from "./receiver/balance.ts";
export { apertureBounds, apertureOfMostHeat } from "./receiver/best-aperture.ts";
export type { ReceiverConditions } from "./receiver/conditions.ts";
export { fittedLine } from "./receiver/fitted-line.ts";
export { totalReceiverLoss } from "./receiver/loss-paths.ts";
export { receiverLosses } from "./receiver/losses.ts";
export { hasCavity, hasPane, hasTube, type Receiver, type TubeReceiver } from "./receiver/receiver.ts";
export { receiverSurvey, type SurveyPlan, type SurveyRow } from "./receiver/survey.ts";
export { surveyMethods } from "./receiver/survey-methods.ts";
export { absoluteAirMass, relativeAirMass } from "./sky/air-mass.ts";
export { boilingPoint, elevationAtPressure, standardPressure } from "./sky/atmosphere.ts";
export { TURBIDITY_CLASSES, type TurbidityClass } from "./sky/clear-sky.ts";
export type { ClearSky } from "./sky/clear-weather.ts";
export { measuredBoiling } from "./sky/measured-boiling.ts";
export type { MeasuredSky } from "./sky/measured-weather.ts";
export { clearSkyMethods, measuredSkyMethods } from "./sky/methods.ts";
export type { Site } from "./sky/site.ts";
export { type SunDayProfile, sunDayProfile } from "./sky/sun-day-profile.ts";
export type { Weather } from "./sky/weather.ts";
export { type SunDay, sunDay } from "./sun/day.ts";
export { extraterrestrialNormal } from "./sun/orbit.ts";
export { apparentAltitudeAt, declination, type SunPosition, sunPosition } from "./sun/position.ts";
export {
	type StandingConditions,
	type StandingTask,
	type TankCooling,
	tankCooling,
} from "./tank/cooling.ts";
export { energyClassLimits } from "./tank/energy-class.ts";
export { coolingMethods } from "./tank/methods.ts";
export type { Tank } from "./tank/tank.ts";
export type { Draw } from "./tap/draw.ts";
export { equivalentVolume } from "./tap/equivalent.ts";
export {
	profileDraws,
	TAPPING_PROFILE_IDS,
	type TappingProfileId,
	tappingProfile,
} from "./tap/profiles.ts";
export { TAPPING_PROFILE_SOURCE } from "./tap/published-profiles.ts";
export { type Advice, runAdvice } from "./test-run/advice.ts";
export type { Factor, Need } from "./test-run/factor.ts";
export { type Drawing, type TestRunReport, testRunReport } from "./test-run/report.ts";
export { type RowFault, rowFaults } from "./test-run/row-faults.ts";
export type { TestRun } from "./test-run/run.ts";
export { type DayCase, type DaySky, dayOf, weatherUnder } from "./uncertainty/day-case.ts";
export { type RangedDay, rangedDay } from "./uncertainty/day-range.ts";
export type { DaySpreads } from "./uncertainty/day-spreads.ts";
export type { BeamSource, InstantCase } from "./uncertainty/instant-case.ts";
export type { InstantSpreads } from "./uncertainty/instant-changes.ts";
export { rangedInstant } from "./uncertainty/instant-range.ts";
export { rangeMethods } from "./uncertainty/methods.ts";
export type { AnswerRange, RangeReport } from "./uncertainty/range.ts";
