PRAGMA user_version = 10;

-- How much a survey's points share of their errors, where the survey itself has shown it: the amplitude, its standard error, and the
-- length of the process it was measured for, m. Rows without keep their check sums.
ALTER TABLE survey_version ADD COLUMN shared_metres REAL;
ALTER TABLE survey_version ADD COLUMN shared_error_metres REAL;
ALTER TABLE survey_version ADD COLUMN shared_length_metres REAL;
