import { z } from "zod";
import { accept } from "#domain/foundation/outcome";
import { idField } from "#application/field.schema";
import { peopleOfCrew } from "#application/people/list-people";
import { notFound } from "#application/refusal";
import { useCase } from "#application/use-case";

/** One person of the crew. */
export const readPerson = useCase("people/read-person", z.object({ personId: idField }), async (work, { personId }) => {
  const [person] = await peopleOfCrew(work, personId);
  return person === undefined ? notFound("person") : accept({ person });
});
