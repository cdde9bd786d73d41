// caught by: house/bounded-include, house/no-relation-disconnect, house/no-relation-null-filter
declare const db: { readonly person: { readonly findMany: (query: object) => Promise<object[]>; readonly update: (query: object) => Promise<object> } };

export const everyone = () => db.person.findMany({ include: { licenses: true } });
export const alone = () => db.person.findMany({ where: { membership: null } });
export const leave = () => db.person.update({ data: { company: { disconnect: true } } });
