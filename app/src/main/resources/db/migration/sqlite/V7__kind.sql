PRAGMA user_version = 7;

-- How a green was surveyed, where somebody said: lidar, drone, rtk, scan or levelled. Rows without keep their check sums.
ALTER TABLE survey_version ADD COLUMN kind TEXT;
