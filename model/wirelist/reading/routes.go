package reading

import (
	"contralay/model/wirelist/name"
	"contralay/model/wirelist/shape"
)

// withoutRoutes takes a column headed by a word for going through for no cavities where the ends have theirs already: it says the way
// of each wire, and "via" is a Spanish word for a pin as well.
//
//	From  | To    | Via
//	PDM:1 | LP1:2 | G1
func (l *look) withoutRoutes(cols []shape.Column) []shape.Column {
	from, to := l.Holds(cols, name.FieldFrom), l.Holds(cols, name.FieldTo)
	if from < 0 || to < 0 || !l.Prof[from].Most(l.Prof[from].Ends) || !l.Prof[to].Most(l.Prof[to].Ends) {
		return cols
	}
	for i := range cols {
		if c := &cols[i]; c.Field == name.FieldPin && !c.Given && saysOnlyThrough(c.Head) {
			c.Field, c.Of = name.FieldKeep, ""
		}
	}
	return cols
}
