import { existsSync, lstatSync, readdirSync, statSync } from "node:fs";
import { resolve as absolute, dirname, join } from "node:path";
import { fileURLToPath } from "node:url";
import type { Library, Shelf } from "../order/library.ts";
import { readText } from "./read-text.ts";
import { shownPath } from "./shown-path.ts";

/**
 * The library that an order at some place on disk draws from, the nearest first: folders beside it, one above it, a `models`
 * folder in either, and last the designs, shops, strings, woods and hardware that come with the program.
 */
export function diskLibrary(orderFile: string): Library {
  const roots = rootsFor(orderFile);
  const fileOf = (root: string, shelf: Shelf, name: string) =>
    inOneFile(shelf) ? join(root, `${name}.yaml`) : join(root, shelf, `${name}.yaml`);
  return {
    find: (shelf, name) => {
      const path = roots.map((root) => fileOf(root, shelf, name)).find(isThere);
      if (path === undefined) return undefined;
      const file = shownPath(path);
      const text = readText(path, file);
      return text.ok ? { ok: true, value: { file, text: text.value } } : text;
    },
    names: (shelf) => {
      const folders = inOneFile(shelf) ? [] : roots.map((root) => join(root, shelf));
      const names = folders.filter(isFolder).flatMap((folder) => readdirSync(folder));
      return [
        ...new Set(names.filter((name) => name.endsWith(".yaml")).map((name) => name.slice(0, -5))),
      ].sort();
    },
  };
}

/** The folder that keeps an order's approved report: `approved` beside the folder of orders, or beside the order itself. */
export function approvedFolder(orderFile: string): string {
  const folder = dirname(absolute(orderFile));
  return join(existsSync(join(dirname(folder), "designs")) ? dirname(folder) : folder, "approved");
}

/** Whether a shelf is one file and not a folder of them. */
function inOneFile(shelf: Shelf): boolean {
  return shelf !== "designs" && shelf !== "shops";
}

/** Whether something stands under a path, even a link that leads nowhere: that is a fault to tell, not to pass by. */
function isThere(path: string): boolean {
  return isFolder(dirname(path)) && lstatSync(path, { throwIfNoEntry: false }) !== undefined;
}

function isFolder(path: string): boolean {
  return statSync(path, { throwIfNoEntry: false })?.isDirectory() === true;
}

function rootsFor(orderFile: string): string[] {
  const folder = dirname(absolute(orderFile));
  const near = [folder, dirname(folder)].flatMap((place) => [place, join(place, "models")]);
  return [...near, shippedModels()];
}

/** The models that come with the program: in the nearest folder above this code that holds any. */
function shippedModels(): string {
  let folder = dirname(fileURLToPath(import.meta.url));
  while (!existsSync(join(folder, "models", "designs")) && dirname(folder) !== folder)
    folder = dirname(folder);
  return join(folder, "models");
}
