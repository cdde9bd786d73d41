// What the Prisma rules need to know of the schema: its relation fields. The schema is the only place that
// says which field is a column and which is a relation; in a query both look alike.
import { existsSync, readFileSync } from "node:fs";

const MODEL_BLOCK = /^model\s+(\w+)\s*\{([\s\S]*?)^\}/gm;
const FIELD = /^\s*(\w+)\s+(\w+)(\[\])?/;

/**
 * The fields whose type is another model, over all models: those with one row at most, and those with many.
 * @param {string} schemaText the text of a schema.prisma
 * @returns {{ one: string[], many: string[] }} sorted names
 */
export function relationsOf(schemaText) {
  const models = [...schemaText.matchAll(MODEL_BLOCK)].map(([, name, body]) => ({ name, body: body ?? "" }));
  const modelNames = new Set(models.map(({ name }) => name));
  const one = new Set();
  const many = new Set();
  for (const line of models.flatMap(({ body }) => body.split("\n"))) {
    const [, name, type, list] = FIELD.exec(line) ?? [];
    if (modelNames.has(type)) (list === undefined ? one : many).add(name);
  }
  return { one: [...one].sort(), many: [...many].sort() };
}

/**
 * The same, read from a file; no schema yet means no relations yet.
 * @param {string | URL} path
 */
export function readRelations(path) {
  return relationsOf(existsSync(path) ? readFileSync(path, "utf8") : "");
}
