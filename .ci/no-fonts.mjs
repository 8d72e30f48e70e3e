// Stands in the bundle for what the PDF library loads for fonts, pictures and passwords, none of which a pack has: sheets are lettered in strokes.
const none = () => {
  throw new Error("the bundled PDF library has no fonts, pictures or passwords");
};
export const create = none;
export const cbc = none;
export const ecb = none;
export default none;
