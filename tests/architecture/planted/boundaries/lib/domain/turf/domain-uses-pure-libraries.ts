import { z } from "zod";

export const species = z.string();
