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
			if c := &l.cols[i]; c.Field != f || l.prof[i].filled == 0 || c.Given {
				continue
			}
			if first >= 0 && l.prof[first].most(l.prof[first].cavities) && !l.prof[i].most(l.prof[i].cavities) {
				l.cols[i].Field = name.FieldKeep
				continue
			}
			first = i
		}
	}
}
