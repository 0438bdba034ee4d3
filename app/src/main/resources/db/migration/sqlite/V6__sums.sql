PRAGMA user_version = 6;

-- A check sum of everything in the row (record 20), written with it. The program fills in those of rows that are there.
ALTER TABLE course_version ADD COLUMN check_sum INTEGER;
ALTER TABLE survey_version ADD COLUMN check_sum INTEGER;
ALTER TABLE levels_version ADD COLUMN check_sum INTEGER;
ALTER TABLE policy_change ADD COLUMN check_sum INTEGER;
ALTER TABLE plan_version ADD COLUMN check_sum INTEGER;
ALTER TABLE fact ADD COLUMN check_sum INTEGER;
ALTER TABLE drawn_version ADD COLUMN check_sum INTEGER;
ALTER TABLE photo ADD COLUMN check_sum INTEGER;
