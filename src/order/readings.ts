/**
 * What has been read of texts, by the form that each was read in and by what messages call its file: `of` answers what it knows, or reads
 * it and keeps that.
 */
export type Readings = {
  readonly of: <Read>(form: object, text: string, file: string, read: () => Read) => Read;
};

/** Readings that keep nothing. */
export const noReadings: Readings = { of: (_form, _text, _file, read) => read() };

/**
 * Readings that are kept as long as their holder: many orders draw on the same designs, shops and strings, and each text is
 * read once for each form and place.
 */
export function keptReadings(): Readings {
  const kept = new Map<object, Map<string, unknown>>();
  return {
    of: <Read>(form: object, text: string, file: string, read: () => Read): Read => {
      const ofForm = kept.get(form) ?? new Map<string, unknown>();
      kept.set(form, ofForm);
      const name = `${file}\n${text}`;
      if (!ofForm.has(name)) ofForm.set(name, read());
      return ofForm.get(name) as Read;
    },
  };
}
