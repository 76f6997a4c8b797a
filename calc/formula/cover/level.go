package cover

// Level is how much a verdict matters, in rising order.
type Level int

// The levels. Sound is the zero value: nothing to say.
const (
	Sound Level = iota
	Note
	Warn
	Stop
)

// String is the level's word.
func (l Level) String() string {
	switch l {
	case Sound:
		return "sound"
	case Note:
		return "note"
	case Warn:
		return "warn"
	}
	return "stop"
}

// Level is that of one piece of advice. Nearly kept, missed only at the extremes, or
// missed where no tube of the kind keeps all three (there is nothing better to buy),
// it is a note; otherwise a warning. It is never a stop.
func (a Advice) Level(kindKeepsAll bool) Level {
	switch {
	case a.KeptAtExtreme:
		return Sound
	case a.Nearly, !kindKeepsAll:
		return Note
	}
	return Warn
}

// Level is the worst of the verdict. kindKeepsAll says whether some tube of the
// kind keeps all three pieces of advice in this place: see AnyKeepsAll. A sleeve
// that sticks is a warning whatever else there is.
func (v Verdict) Level(kindKeepsAll bool) Level {
	if v.Stops() {
		return Stop
	}
	worst := Sound
	if v.Sticks {
		worst = Warn
	}
	for _, a := range v.advices() {
		worst = max(worst, a.Level(kindKeepsAll))
	}
	return worst
}

// AnyKeepsAll reports whether one of the verdicts on the tubes of a kind keeps
// all three pieces of advice without a stop.
func AnyKeepsAll(kind []Verdict) bool {
	for _, v := range kind {
		if v.KeepsAll() {
			return true
		}
	}
	return false
}
