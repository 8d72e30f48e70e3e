declare module "@3mfconsortium/lib3mf" {
  type Freed = { delete: () => void };
  type MeshObject = Freed & {
    GetName: () => string;
    IsValid: () => boolean;
    IsManifoldAndOriented: () => boolean;
    GetVertexCount: () => number;
    GetTriangleCount: () => number;
  };
  type Objects = Freed & { MoveNext: () => boolean; GetCurrentMeshObject: () => MeshObject };
  type Reader = Freed & {
    SetStrictModeActive: (strict: boolean) => void;
    ReadFromFile: (name: string) => void;
    GetWarningCount: () => number;
  };
  type Model = Freed & { QueryReader: (kind: string) => Reader; GetMeshObjects: () => Objects };

  /** The part of the reader that its tests use. */
  export type Lib3mf = {
    FS: { writeFile: (name: string, bytes: Uint8Array) => void };
    CWrapper: new () => Freed & { CreateModel: () => Model };
  };

  export default function load(): Promise<Lib3mf>;
}
