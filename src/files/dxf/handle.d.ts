declare module "dxf-writer/src/Handle.js" {
  /** The counter that the DXF library numbers its objects from, one for the whole process. */
  const Handle: { seed: number };
  export default Handle;
}
