import { RuleTester } from "eslint";
import { describe, expect, test } from "vitest";
import { boundedInclude, MOST_PARENTS } from "../../scripts/eslint-rules/bounded-include.mjs";
import { noRelationDisconnect } from "../../scripts/eslint-rules/no-relation-disconnect.mjs";
import { noRelationNullFilter } from "../../scripts/eslint-rules/no-relation-null-filter.mjs";
import { relationsOf } from "../../scripts/eslint-rules/prisma-schema.mjs";
import { parser } from "typescript-eslint";

RuleTester.describe = describe;
RuleTester.it = test;
RuleTester.itOnly = test;

const tester = new RuleTester({ languageOptions: { parser } });
const options = [{ one: ["company", "person"], many: ["licenses", "people"] }];

test("relations are told from columns, and one from many", () => {
  const schema = `
    model Company {
      companyId String @id /// Person is not its type
      people    Person[]
      license   License?
    }
    model Person {
      company Company @relation(fields: [companyId], references: [companyId])
      role    Role
      // friend Person
    }
    enum Role {
      owner
    }
    model License {
      number String[]
    }`.replace(/^ {4}/gm, "");
  expect(relationsOf(schema)).toEqual({ one: ["company", "license"], many: ["people"] });
});

tester.run("no-relation-disconnect", noRelationDisconnect, {
  valid: ["observer.disconnect();", "await client.$disconnect();", "const data = { companyId: null };"],
  invalid: [
    { code: "db.person.update({ data: { company: { disconnect: true } } });", errors: 1 },
    { code: 'const data = { company: { "disconnect": { id } } } satisfies Data;', errors: 1 },
  ],
});

tester.run("no-relation-null-filter", noRelationNullFilter, {
  valid: [
    "db.person.findMany({ where: { personId: null } });",
    "db.person.findMany({ where: { company: { name: null } } });",
    "db.person.update({ data: { company: null } });",
    "const person = null; const found = { person: null };",
    { code: "db.person.findMany({ where: { person: /null/ } });" },
  ].map((valid) => (typeof valid === "string" ? { code: valid, options } : { ...valid, options })),
  invalid: [
    "db.person.findMany({ where: { person: null } });",
    "db.person.findMany({ where: { OR: [{ name: 'a' }, { person: null as never }] } });",
    "db.person.findMany({ where: { person: { is: null } } });",
    "db.person.findMany({ where: { licenses: { some: { person: { isNot: null } } } } });",
    "const query = { where: { company: null } };",
  ].map((code) => ({ code, options, errors: [{ messageId: "relationNull" }] })),
});

tester.run("bounded-include", boundedInclude, {
  valid: [
    "db.person.findMany({ take: 50, include: { licenses: true } });",
    `db.person.findMany({ take: ${String(MOST_PARENTS)}, include: { licenses: true } });`,
    "db.person.findUnique({ where, include: { licenses: true, company: { include: { people: true } } } });",
    "db.person.findFirst({ select: { name: true, company: true } });",
    "db.company.findMany({ take: 20, include: { people: { take: 400, include: { licenses: true } } } });",
    "db.person.findMany({ select: { name: true } });",
    "db.person.findMany({ include: { _count: true } });",
    "db.person.findMany({ select: columns });",
    "const config = { include: ['tests/**'], select: 'all' };",
    "db.person.create({ data, include: { licenses: true } } satisfies Query);",
  ].map((code) => ({ code, options })),
  invalid: [
    "db.person.findMany({ include: { licenses: true } });",
    "db.person.findMany({ take: pageSize, include: { licenses: true } });",
    `db.person.findMany({ take: ${String(MOST_PARENTS + 1)}, include: { company: true } });`,
    "db.person.findMany({ select: { name: true, company: { select: { name: true } } } });",
    "db.company.findUnique({ include: { people: { where, select: { licenses: true } } } });".replace("include: { people", "select: { people"),
    "db.person.createManyAndReturn({ data, include: { company: true } });",
    "const query = { include: { licenses: true } };",
  ].map((code) => ({ code, options, errors: [{ messageId: "unbounded" }] })),
});

tester.run("bounded-include, where the bound can't be read", boundedInclude, {
  valid: [],
  invalid: [
    { code: "db.person.findMany({ take: 5, include });", options, errors: [{ messageId: "hidden" }] },
    { code: "db.person.findMany({ include: { ...everything }, take: 5 });", options, errors: [{ messageId: "hidden" }] },
    {
      // The product counts: 100 companies with 100 people each are 10,000 parents of licenses.
      code: "db.company.findMany({ take: 100, include: { people: { take: 100, include: { licenses: true } } } });",
      options,
      errors: [{ messageId: "unbounded" }],
    },
  ],
});
