import { concertA4, frequency } from "./pitch.ts";
import { kinds } from "./quantity.ts";

/** A tension, N, at a string length, mm, and a pitch standard, Hz. */
export type TensionAt = { readonly is: number; readonly at: number; readonly a4?: number | undefined };

/**
 * Mass per length, g/m, of a string some semitones above A4 whose maker gives a tension: mu = T / (2 L f)² (Mersenne's law
 * turned round), with T in N, L in m, f in Hz. Where no standard is given, A4 is 440 Hz.
 */
export function massFromTension({ is, at, a4 = concertA4 }: TensionAt, semitones: number): number {
  return (1000 * is) / ((2 * at * frequency(semitones, a4)) / 1000) ** 2;
}

/**
 * Tension, N, of a string at pitch: T = mu (2 L f)² (Mersenne's law), from its mass per length, g/m, the string length, mm, and
 * its frequency, Hz.
 */
export function tensionFromMass(mass: number, stringLength: number, pitch: number): number {
  return (mass / 1000) * ((2 * stringLength * pitch) / 1000) ** 2;
}

/**
 * The density, kg/m³, of a string that filled its round section: diameter mm, mass per length g/m.
 */
export function meanDensity(diameter: number, mass: number): number {
  return (1000 * mass) / ((Math.PI / 4) * diameter ** 2);
}

/** What a string's mean density may be, kg/m³: loosely wound nylon, and a winding of tungsten, with room (G: default, confirm). */
export const likelyDensity = { least: 900, most: 16000 } as const;

/** The unit word that a figure was likely meant in. */
export type Unit = { readonly unit: string };

/**
 * What a mass per length may have been meant as, where it is no string's for its diameter: the unit that makes it one, if any.
 * `likely` for a mass that can be.
 */
export function likelyUnit(diameter: number, mass: number): "likely" | "unknown" | Unit {
  const fits = (value: number) => {
    const density = meanDensity(diameter, value);
    return density >= likelyDensity.least && density <= likelyDensity.most;
  };
  if (fits(mass)) return "likely";
  const meant = Object.entries(kinds["mass-per-length"].words).find(([, factor]) => fits(mass * factor));
  return meant === undefined ? "unknown" : { unit: meant[0] };
}
