-- An answer covers the hold that was answered and no other of its rule: it keeps the hold's words and the day. Of the answers
-- before this nobody knows what they were given to; they stay on file with nothing here and cover nothing, so that their
-- holds are answered anew.
ALTER TABLE "hold_answer" ADD COLUMN "answered_hold" TEXT NOT NULL DEFAULT '';
ALTER TABLE "hold_answer" ALTER COLUMN "answered_hold" DROP DEFAULT;

-- A hold is answered once. Its words may be longer than an index takes, so they are compared by their digest.
DROP INDEX "hold_answer_company_id_visit_id_rule_key";
CREATE UNIQUE INDEX "hold_answer_of_a_hold_is_one" ON "hold_answer"("company_id", "visit_id", "rule", md5("answered_hold"));
