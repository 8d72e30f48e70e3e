/** The library entry: what the commands use. */

export { type ReadDxf, type ReadNote, type ReadPath, readDxf } from "./files/dxf/read-dxf.ts";
export { publish } from "./files/publish.ts";
export { readText } from "./files/read-text.ts";
export type { Library, Shelf } from "./order/library.ts";
export { type Checked, InputError, type Problem, problemText } from "./order/problem.ts";
export { type Options, resolve } from "./order/resolve.ts";
export type { Spec, SpecString, SpecValue } from "./order/spec.ts";
export { kernelOnce } from "./pack/kernel-once.ts";
export { loadOrder } from "./pack/load.ts";
export { type Job, type Made, makePacks } from "./pack/make.ts";
export { type Held, type Means, type Pack, packOf, partNames } from "./pack/pack.ts";
export type { PackFile } from "./pack/pack-file.ts";
export { reportFor } from "./pack/report-for.ts";
export type { Solids, SolidTasks } from "./pack/solids/solid-tasks.ts";
export { type SolidsAside, solidsAside } from "./pack/solids/solids-aside.ts";
export { solidsHere } from "./pack/solids/solids-here.ts";
export { type Comparison, compareReports } from "./report/compare.ts";
export { comparisonMarkdown, comparisonText } from "./report/comparison-text.ts";
export { readReport } from "./report/read-report.ts";
export type { Report, ReportedCheck, ReportedDimension } from "./report/report.ts";
export { memoryStore, type Store } from "./step/store.ts";
export { type Model, modelOf } from "./workshop/model.ts";
