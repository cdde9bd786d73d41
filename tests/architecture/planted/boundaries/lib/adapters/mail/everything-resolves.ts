import { tsImport } from "tsx/esm/api";

export const unnamed: unknown = tsImport;
