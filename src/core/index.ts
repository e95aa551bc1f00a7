// The door of the core. A job (unknown data) goes in; problems or the whole development come out, in Node as in a
// browser. Lengths in mm, areas in mm², angles in radians unless a name says degrees. Axes: docs/conventions.md.

export { develop } from "./develop";
export { developJob, type Development, type Outcome } from "./developJob";
export type { Piece } from "./part/pipePiece";
export { edgePoint, elementAt, keptAt } from "./part/pieceElement";
export { openingOutline } from "./part/openingCutter";
export { roundPipe, type Pipe } from "./form/pipe";
export type { Cutter, FaceRef, PlaneCutter, SweepCutter } from "./cut/cutter";
export { sameOwner, type Owner } from "./cut/owner";
export type { Edge } from "./trim/edge";
export type { Span } from "./trim/spans";
export type { Stretch } from "./trim/stretches";
export type { Trimmed } from "./trim/trimmed";
export type { Loop, Pattern, PatternSegment } from "./unroll/pattern";
export type { Proof } from "./unroll/proof";
export { rolledPoint } from "./unroll/rolledPoint";
export type { RuledElement, Station } from "./unroll/stations";

export { adequacy, CUSTOMARY_COUNTS, type Adequacy } from "./inspect/adequacy";
export { smoothCubics } from "./inspect/smoothCubics";
export { smoothGap, type SmoothGap } from "./inspect/smoothGap";
export { girthAt } from "./inspect/trueEnd";
export { diagnose, type Diagnosis, type Explanation } from "./inspect/drawn/diagnose";
export { marks, type ItemMarks, type Marks } from "./inspect/drawn/marks";
export { verdict, type JudgedReading, type Rule, type Verdict } from "./inspect/drawn/verdict";
export type { Mistake, MistakeKind } from "./inspect/drawn/mistake";
export { isOrdinate, type OrdinatePlace, type ReadLine, type Reading, type ReadingPlace, type Readings } from "./inspect/drawn/readings";

export { rectification, paperPoint, picturePoint, LENS_POINTS, SURE, type PictureSize, type Rectification, type Rectified } from "./inspect/photo/rectification";
export { POINTS, type MarkedPoint } from "./inspect/photo/markedPoint";
export { inDrawingFrame, type Framed } from "./inspect/photo/drawingFrame";
export { pixelsPerMm, rectifiedPicture, type PaperRegion, type Pixels } from "./inspect/photo/rectifiedPicture";
export { tracedCrossings } from "./inspect/photo/tracedCrossings";

export { exerciseFault, mostTried, variantOfCode, variants, variantSearch, type Search, type Variant, type VariantFault, type Variants } from "./variant/variants";
export { exerciseOf, type Exercise } from "./variant/exercise";
export type { Constraint } from "./variant/broken";
export type { RangeFault } from "./variant/rangeValues";

export { fabricate, type Fabrication } from "./fabricate";
export type { Allowance, AllowancePart } from "./fabricate/allowance";
export { bendAllowance, bendDeduction, dinKFactor, type Bend } from "./fabricate/bendAllowance";
export type { Blank } from "./fabricate/blank";
export type { Contour, ContourSegment } from "./fabricate/contour";
export { DENSITIES } from "./fabricate/densities";
export type { EndPlate } from "./fabricate/endPlate";
export type { FabricatedPiece } from "./fabricate/fabricatedPiece";
export { GAUGES, gaugeOf, gaugeThickness, type Gauge } from "./fabricate/gauges";
export type { Mark } from "./fabricate/mark";
export type { PartRow } from "./fabricate/partList";
export type { AllowancePlace } from "./fabricate/place";
export type { StationHeights } from "./fabricate/stationHeights";

export type { Vec2, Vec3 } from "./geometry/vector";
export { arcSweep, reverseSegment, segmentPoint, type Arc, type Cubic, type Line, type Segment } from "./geometry/segment";
export { pathArea, pathLength } from "./geometry/path";
export { arcsOf } from "./geometry/arcsOf";
export { flattenSegments } from "./geometry/flatten";
export { parallelBand } from "./geometry/parallelBand";
export { fitCubics, type SmoothCurve } from "./geometry/fit";

export { TURN, degrees, radians, wrapTurn } from "./numeric/angle";
export { bisect } from "./numeric/bisect";
export { CHORD_TOLERANCE, NOISE, ROOT_NOISE } from "./numeric/tolerance";

export type * from "./job/job";
export type * from "./job/fabricationChoices";
export type * from "./job/marking";
export type { ExerciseChoices, Keeps, VariantRange } from "./job/exerciseChoices";
export { noExercise } from "./job/exerciseChoices";
export type { Problem, ProblemCode } from "./job/problem";
export { LIMITS, CHOICES, type Limit } from "./job/limits";
export { defaultJob } from "./job/defaultJob";
export { parseJob, type ParsedJob } from "./job/parseJob";
export { readJobText } from "./job/readJobText";
export { writeJobText } from "./job/writeJobText";
export { parseQuantity, type ParsedQuantity } from "./job/parseQuantity";
export { formatQuantity, type QuantityFormat } from "./job/formatQuantity";
export type { QuantityKind } from "./job/quantityUnits";
export type { QuantityReason } from "./job/quantityTokens";
