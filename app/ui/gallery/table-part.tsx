import { Button } from "#ui/button";
import { DataTable } from "#ui/data-table.client";
import { Disclosure } from "#ui/disclosure";
import { EmptyState } from "#ui/empty-state";
import { FindingMark } from "#ui/finding-mark";
import { Row } from "#ui/row";
import { Section } from "#ui/section";
import { Sheet } from "#ui/sheet";
import { Stack } from "#ui/stack";
import { Table } from "#ui/table";
import { VisitMark } from "#ui/visit-mark";
import { longRow, propertyColumns, propertyRows } from "./sample-rows";

const noun = ["property", "properties"] as const;

/** Tables: small, empty, one row, overlong, two hundred rows. */
export function TablePart() {
  const empty = <EmptyState sentence="No property yet." actions={<Button kind="act">Add a property</Button>} />;
  return (
    <Section id="tables" name="Tables">
      <Stack gap={7}>
        <Sheet flush>
          <Table
            caption="Tuesday, truck 2"
            captionSpoken
            columns={[
              { id: "order", head: "Stop", align: "figure" },
              { id: "street", head: "Street" },
              { id: "standing", head: "Standing" },
              { id: "finding", head: "Findings" },
              { id: "amount", head: "Spray, gal", align: "figure" },
            ]}
            rows={[
              { id: "1", href: "#s1", cells: { order: "1", street: "Alder Ct 412", standing: <VisitMark state="done" />, amount: "12.5" } },
              { id: "2", href: "#s2", cells: { order: "2", street: "Birch Ln 9", standing: <VisitMark state="part-done" />, amount: "4" } },
              {
                id: "8",
                href: "#s8",
                cells: {
                  order: "8",
                  street: "Oberammergauerstraßenverlängerung 18",
                  standing: <VisitMark state="past-its-window" />,
                  finding: (
                    <Row gap="narrow">
                      <FindingMark level="hold" size={16} />
                      <FindingMark level="take-care" size={16} />
                    </Row>
                  ),
                  amount: "120",
                },
              },
            ]}
          />
        </Sheet>
        <DataTable id="none" caption="No rows" columns={propertyColumns} rows={[]} noun={noun} empty={empty} />
        <DataTable id="one" caption="One row, and longer than any column" columns={propertyColumns} rows={[longRow]} noun={noun} empty={empty} />
        <Disclosure name="Two hundred rows">
          <DataTable
            id="many"
            caption="Two hundred properties"
            columns={propertyColumns}
            rows={propertyRows(200)}
            noun={noun}
            filterLabel="Find by street or customer"
            sortedBy={{ id: "address" }}
            dense
            empty={empty}
          />
        </Disclosure>
      </Stack>
    </Section>
  );
}
