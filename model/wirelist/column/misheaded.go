package column

import (
	"contralay/model/wirelist/name"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/table"
)

// Misheaded takes its meaning off a column that is headed as sizes, colours or lengths and holds none, where another is headed so and
// holds them: "Area" beside "Gauge" is where the wire runs. Then it looks at headings of cavities and of numbers of parts.
func Misheaded(cols []shape.Column, prof []Profile, rows []table.Row) {
	for _, kind := range []struct {
		field name.Field
		of    func(p *Profile) int
	}{
		{name.FieldGauge, func(p *Profile) int { return p.Sizes + p.Units }},
		{name.FieldColour, func(p *Profile) int { return p.Colours }},
		{name.FieldLength, func(p *Profile) int { return p.Lengths + p.Numbers }},
	} {
		holds := false
		for i := range cols {
			holds = holds || cols[i].Field == kind.field && prof[i].Filled > 0 && 2*kind.of(&prof[i]) > prof[i].Filled
		}
		for i := range cols {
			if c := &cols[i]; holds && c.Field == kind.field && !c.Given && prof[i].Filled > 0 && kind.of(&prof[i]) == 0 {
				c.Field = name.FieldKeep
			}
		}
	}
	unheadedNotes(cols, prof)
	shortPins(cols, prof, rows)
	endFittings(cols, prof, rows)
}
