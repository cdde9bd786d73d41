// `where: { relation: null }` finds nothing, and says nothing, where the foreign key has the company in it.
import { propertyName, relationsOption, unwrap } from "./syntax.mjs";

const FILTERS_OF_RELATION = ["is", "isNot"];

/** @param {any} value */
const isNull = (value) => unwrap(value).type === "Literal" && unwrap(value).raw === "null";

/**
 * Whether the property stands somewhere inside the value of a property called `where`.
 * @param {any} node
 */
function isInsideWhere(node) {
  for (let above = node.parent; above && !/(Statement|Declaration)$/.test(above.type); above = above.parent) {
    if (propertyName(above) === "where") return true;
  }
  return false;
}

/** @type {import("eslint").Rule.RuleModule} */
export const noRelationNullFilter = {
  meta: {
    type: "problem",
    docs: { description: "Refuses to filter a Prisma relation by null: it silently finds nothing." },
    messages: { relationNull: "`{{name}}: null` on a relation silently finds nothing: compare the relation's column." },
    schema: [relationsOption],
  },
  create(context) {
    const { one, many } = context.options[0];
    const names = new Set([...one, ...many, ...FILTERS_OF_RELATION]);
    return {
      Property(node) {
        const name = propertyName(node);
        if (name === undefined || !names.has(name) || !isNull(node.value) || !isInsideWhere(node)) return;
        context.report({ node, messageId: "relationNull", data: { name } });
      },
    };
  },
};
