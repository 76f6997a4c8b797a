package settle

import "contralay/model/wirelist/name"

// twoPinsOfASide keeps of two columns of cavities of one side the first: what the other, "From terminal", holds is crimped on.
//
//	From pin | From terminal
//	1        | T-22F
func (l endColumns) twoPinsOfASide() {
	for _, f := range []name.Field{name.FieldFromPin, name.FieldToPin} {
		first := -1
		for i := range l.Cols {
			if c := &l.Cols[i]; c.Field != f || l.Prof[i].Filled == 0 || c.Given {
				continue
			}
			if first >= 0 && l.Prof[first].Most(l.Prof[first].Cavities) && !l.Prof[i].Most(l.Prof[i].Cavities) {
				l.Cols[i].Field = name.FieldKeep
				continue
			}
			first = i
		}
	}
}
