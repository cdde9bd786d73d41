// `disconnect` sets every column of the foreign key to null, and in this schema the company is one of them.
import { propertyName } from "./syntax.mjs";

/** @type {import("eslint").Rule.RuleModule} */
export const noRelationDisconnect = {
  meta: {
    type: "problem",
    docs: { description: "Refuses Prisma's relation `disconnect`, which nulls the company's column too." },
    messages: {
      nullsCompany: "`disconnect` nulls company_id as well: set the one column (`billToId: null`) instead.",
    },
    schema: [],
  },
  create(context) {
    return {
      Property(node) {
        if (propertyName(node) === "disconnect") context.report({ node, messageId: "nullsCompany" });
      },
    };
  },
};
