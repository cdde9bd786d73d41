import Link from "next/link";
import { type PropertyOnFile } from "#application/properties/read-property";
import { CLIENT_STANDING_SENTENCES, CLIENT_STANDING_WORDS } from "#domain/properties/client-standing";
import { LinkButton } from "#ui/button";
import { KeyValueList } from "#ui/key-value-list";
import { Row } from "#ui/row";
import { Stack } from "#ui/stack";

/** The customer, how they stand, how they are reached, and what else is theirs. */
export function PeopleOfProperty({ property, mayChange }: { readonly property: PropertyOnFile; readonly mayChange: boolean }) {
  const { client, propertyId } = property;
  return (
    <Stack gap={4}>
      <KeyValueList
        pairs={[
          { key: "Customer", value: client.name },
          { key: "Standing", value: `${CLIENT_STANDING_WORDS[client.standing]}. ${CLIENT_STANDING_SENTENCES[client.standing]}` },
          { key: "Phone", value: client.phone ?? "Not on file" },
          { key: "Email", value: client.email ?? "Not on file" },
          {
            key: "Their other properties",
            value:
              client.otherProperties.length === 0 ? (
                "None"
              ) : (
                <ul>
                  {client.otherProperties.map((other) => (
                    <li key={other.propertyId}>
                      <Link href={`/properties/${other.propertyId}`} prefetch={false}>
                        {other.street}, {other.city}
                      </Link>
                    </li>
                  ))}
                </ul>
              ),
          },
        ]}
      />
      {mayChange && (
        <Row>
          <LinkButton href={`/properties/${propertyId}/change-client`}>Change the customer</LinkButton>
          <LinkButton href={`/properties/${propertyId}/add-property`}>Add another property</LinkButton>
        </Row>
      )}
    </Stack>
  );
}
