import { database } from "../../../tests/support/database";

export const store = database;
