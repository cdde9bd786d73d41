// What every Prisma rule asks of a piece of syntax.

/**
 * The plain name of an object's property, also where it is quoted; undefined for a computed one or a spread.
 * @param {any} property
 * @returns {string | undefined}
 */
export function propertyName(property) {
  if (property.type !== "Property" || property.computed) return undefined;
  return property.key.type === "Identifier" ? property.key.name : String(property.key.value);
}

/**
 * The value of an object's property of that name, without TypeScript's wrappers.
 * @param {any} object @param {string} name
 * @returns {any} the expression, or undefined
 */
export function propertyValue(object, name) {
  const property = object.properties.find((/** @type {any} */ each) => propertyName(each) === name);
  return property === undefined ? undefined : unwrap(property.value);
}

/** @param {any} node */
const isTypeWrapper = (node) => ["TSAsExpression", "TSSatisfiesExpression", "TSNonNullExpression"].includes(node.type);

/**
 * An expression without the TypeScript wrappers that change nothing at run time.
 * @param {any} node
 * @returns {any} the inner expression
 */
export function unwrap(node) {
  return isTypeWrapper(node) ? unwrap(node.expression) : node;
}

/**
 * What stands around an expression, TypeScript's wrappers left out.
 * @param {any} node
 * @returns {any} the outer node
 */
export function holderOf(node) {
  return isTypeWrapper(node.parent) ? holderOf(node.parent) : node.parent;
}

/** The option that names the schema's relations, as {@link import("./prisma-schema.mjs")} reads them. */
export const relationsOption = {
  type: "object",
  properties: {
    one: { type: "array", items: { type: "string" } },
    many: { type: "array", items: { type: "string" } },
  },
  required: ["one", "many"],
  additionalProperties: false,
};
