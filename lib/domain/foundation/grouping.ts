/** The members of a list by what they have in common; groups and their members stay in the order in which they came. */
export function groupedBy<Member, Key>(members: readonly Member[], keyOf: (member: Member) => Key): ReadonlyMap<Key, readonly Member[]> {
  const groups = new Map<Key, Member[]>();
  for (const member of members) {
    const key = keyOf(member);
    const group = groups.get(key);
    if (group === undefined) groups.set(key, [member]);
    else group.push(member);
  }
  return groups;
}
