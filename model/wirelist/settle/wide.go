package settle

// MostPad is how long the name of a pad of a board may be, "5V OUT", in bytes (no source).
const MostPad = 6
