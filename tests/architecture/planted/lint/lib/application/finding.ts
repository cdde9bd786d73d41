// caught by nothing
export type Finding = { readonly kind: "hold" } | { readonly kind: "note" };
