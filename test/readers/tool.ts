import { execFileSync, spawnSync } from "node:child_process";
import { describe, it } from "vitest";

/** Whether a program can be run here. */
function there(command: string, args: readonly string[]): boolean {
  return spawnSync(command, args, { stdio: "ignore" }).status === 0;
}

/**
 * Tests that need another program: they run where it is there, say why they don't where it is missing, and fail instead when
 * CI is set, so that no green run hides a reader that never read.
 */
export function describeWith(
  tool: { name: string; command: string; args: readonly string[] },
  what: string,
  body: () => void,
) {
  if (there(tool.command, tool.args)) return describe(what, body);
  if (process.env.CI) {
    return describe(what, () => {
      it("finds the program that it reads with", () => {
        throw new Error(`${tool.name} is missing, and CI is set`);
      });
    });
  }
  return describe.skip(`${what} (skipped: ${tool.name} is not installed)`, body);
}

/** ezdxf and shapely, from Debian's python3-ezdxf and python3-shapely. */
export const ezdxf = {
  name: "python3-ezdxf or python3-shapely",
  command: "/usr/bin/python3",
  args: ["-c", "import ezdxf, shapely"],
};

/** numpy, which comes with python3-shapely. */
export const numpy = { name: "python3-numpy", command: "/usr/bin/python3", args: ["-c", "import numpy"] };

/** admesh, from the Debian package of that name. */
export const admesh = { name: "admesh", command: "admesh", args: ["--version"] };

/** What a Python script prints as JSON. */
export function python(script: string, ...args: string[]): unknown {
  const text = execFileSync("/usr/bin/python3", [script, ...args], { encoding: "utf8", maxBuffer: 1e8 });
  return JSON.parse(text);
}
