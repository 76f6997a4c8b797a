package column

import (
	"contralay/model/wirelist/name"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/table"
)

// What is crimped on an end is often headed as a terminal of that end, beside ends that say their cavities.
//
//	Wire | From   | To     | Term from | Term to
//	P101 | CB1-2  | TB1-1  | R16-8     | R16-6
//	P102 | J101-1 | CB4-2  | S22-20    | R16-6
//	P103 | J101-2 | CB4-3  | S22-20    | R16-6

// endFittings takes columns that are headed as the cavities of an end for what is fitted there, where the ends themselves say a cavity and
// hardly one of them comes twice, and the cells beside them come again and again.
func endFittings(cols []shape.Column, prof []Profile, rows []table.Row) {
	for i := range cols {
		c, p := &cols[i], &prof[i]
		side := map[name.Field]name.Field{name.FieldFromPin: name.FieldFrom, name.FieldToPin: name.FieldTo}[c.Field]
		if side == "" || c.Given || c.Of != "" || p.All(p.Numbers) || 2*p.Distinct > p.Filled {
			continue
		}
		for k := range cols {
			if q := &prof[k]; cols[k].Field == side && q.Most(CavitiesIn(rows, k)) && 4*q.Distinct >= 3*q.Filled {
				c.Field = name.FieldKeep
			}
		}
	}
}
