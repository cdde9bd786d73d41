export const gadget = "a folder without a place in the order";
