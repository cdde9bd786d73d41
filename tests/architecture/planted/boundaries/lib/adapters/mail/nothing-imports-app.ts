import { button } from "#ui/innocent-button";

export const mailWithButton = button;
