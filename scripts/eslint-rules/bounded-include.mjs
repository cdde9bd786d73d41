// Prisma returns every child twice when it loads the children of 16,383 or more parents. So a query that brings
// relations along says in plain sight how many parents there can be: one, or a literal `take` at every list.
import { holderOf, propertyName, propertyValue, relationsOption, unwrap } from "./syntax.mjs";

/** Half of the number at which the doubling begins. */
export const MOST_PARENTS = 8_000;

const FOR_MANY_ROWS = new Set(["findMany", "createManyAndReturn", "updateManyAndReturn"]);
const FOR_ONE_ROW = new Set([
  ...["findUnique", "findUniqueOrThrow", "findFirst", "findFirstOrThrow"],
  ...["create", "update", "upsert", "delete"],
]);

/**
 * The literal `take` of a query's object, or Infinity.
 * @param {any} query
 * @returns {number}
 */
function takeOf(query) {
  const take = propertyValue(query, "take");
  return take?.type === "Literal" && Number.isInteger(take.value) ? take.value : Infinity;
}

/**
 * The name of the method that a call calls.
 * @param {any} holder
 * @returns {string | undefined}
 */
function calledMethod(holder) {
  const isMethodCall = holder.type === "CallExpression" && holder.callee.type === "MemberExpression";
  return isMethodCall ? holder.callee.property.name : undefined;
}

/**
 * How many rows at most the object of a query, or of a relation inside one, can stand for.
 * @param {any} query @param {ReadonlySet<string>} lists names of the relations with many rows
 * @returns {number} Infinity where nothing says
 */
function mostRows(query, lists) {
  const holder = holderOf(query);
  const method = calledMethod(holder);
  if (method !== undefined && FOR_ONE_ROW.has(method)) return 1;
  if (method !== undefined && FOR_MANY_ROWS.has(method)) return takeOf(query);
  const name = propertyName(holder);
  if (name === undefined) return Infinity;
  const relations = holder.parent;
  const choice = holderOf(relations);
  if (!["include", "select"].includes(propertyName(choice) ?? "")) return Infinity;
  return mostRows(choice.parent, lists) * (lists.has(name) ? takeOf(query) : 1);
}

/** @type {import("eslint").Rule.RuleModule} */
export const boundedInclude = {
  meta: {
    type: "problem",
    docs: { description: "Lets a Prisma query bring relations along only for a small, literal number of rows." },
    messages: {
      unbounded: `\`{{name}}\` brings relations along for too many rows or nobody knows how many: a literal \`take\` at every list keeps it to ${MOST_PARENTS}.`,
      hidden: "`include` is written out in the query, so that the bound on its rows can be read beside it.",
    },
    schema: [relationsOption],
  },
  create(context) {
    const { one, many } = context.options[0];
    const lists = new Set(many);
    const relations = new Set([...one, ...many]);
    return {
      Property(node) {
        const name = propertyName(node);
        if (name !== "include" && name !== "select") return;
        const chosen = unwrap(node.value);
        const properties = chosen.type === "ObjectExpression" ? chosen.properties : [];
        if (chosen.type !== "ObjectExpression" || properties.some(({ type }) => type === "SpreadElement")) {
          const method = calledMethod(holderOf(node.parent)) ?? "";
          if (name === "include" && FOR_MANY_ROWS.has(method)) context.report({ node, messageId: "hidden" });
        }
        const bringsRelations = properties.some((each) => relations.has(propertyName(each) ?? ""));
        if (bringsRelations && mostRows(node.parent, lists) > MOST_PARENTS) {
          context.report({ node, messageId: "unbounded", data: { name } });
        }
      },
    };
  },
};
