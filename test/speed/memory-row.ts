import { spawnSync } from "node:child_process";
import type { Row } from "./row.ts";

/** The most memory that a process held, as it says itself when it ends, beside a bare Node's. */
export function memoryRow(name: string, args: readonly string[]): Row {
  const tell =
    'data:text/javascript,process.on("exit",()=>console.error("most "+process.resourceUsage().maxRSS))';
  const most = (argv: readonly string[]) => {
    const { stderr } = spawnSync(process.execPath, ["--import", tell, ...argv], { encoding: "utf8" });
    return Number(/most (\d+)/.exec(stderr)![1]) / 1024;
  };
  const [full, bare] = [most(args), most(["-e", "0"])];
  return { name, median: full, unit: "MB", against: "node -e 0", ratio: full / bare };
}
