package reading

import "contralay/model/wirelist/name"

// twoPinsOfASide keeps of two columns of cavities of one side the first: what the other, "From terminal", holds is crimped on.
//
//	From pin | From terminal
//	1        | T-22F
func (l endColumns) twoPinsOfASide() {
	for _, f := range []name.Field{name.FieldFromPin, name.FieldToPin} {
		first := -1
		for i := range l.cols {
			if c := &l.cols[i]; c.Field != f || l.prof[i].Filled == 0 || c.Given {
				continue
			}
			if first >= 0 && l.prof[first].Most(l.prof[first].Cavities) && !l.prof[i].Most(l.prof[i].Cavities) {
				l.cols[i].Field = name.FieldKeep
				continue
			}
			first = i
		}
	}
}
