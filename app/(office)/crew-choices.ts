import { listPeople } from "#application/people/list-people";
import { type Choice } from "#ui/select-field";
import { asMember, memberOfPage } from "../session";

/** Who may have done something: everybody who works here now, and whoever asks among them ("" where they are not). */
export async function crewChoices(): Promise<{ readonly people: readonly Choice[]; readonly own: string }> {
  const { member } = await memberOfPage();
  const answer = await asMember(listPeople, {});
  const here = answer.ok ? answer.value.people.filter(({ leftOn }) => leftOn === null) : [];
  return {
    people: here.map(({ personId, name }) => ({ value: personId, word: name })),
    own: here.some(({ personId }) => personId === member.personId) ? member.personId : "",
  };
}
