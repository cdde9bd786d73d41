import { idField, requiredDate } from "#application/field.schema";

/** What is asked of every calibration: of what, by whom, when. */
export const calibrationFields = {
  equipmentId: idField,
  operatorId: idField,
  madeOn: requiredDate("the day it was measured"),
};
