package printed

import (
	"slices"
	"strings"
)

// types empties the rows below headings in which a script says what kind of value each column holds, and the rule above them.
//
//	From | Pin | To
//	---  | --- | ---
//	str  | i64 | str
func (p *plain) types() {
	for i, r := range p.t.Rows {
		n, _ := r.Filled()
		if n < 2 || i == 0 || slices.ContainsFunc(r.Cells, func(c string) bool { return c != "" && !isType(c) }) {
			continue
		}
		says := strings.Trim(strings.Join(r.Cells, ", "), ", ")
		rows := []int{r.Line}
		p.empty(i)
		if above := p.t.Rows[i-1].Cells; !slices.ContainsFunc(above, func(c string) bool { return strings.Trim(c, "-") != "" }) {
			rows = []int{p.t.Rows[i-1].Line, r.Line}
			p.empty(i - 1)
		}
		p.signs = true
		p.say("kinds of values below the headings", says, "left out", rows)
	}
	p.withoutEmpty()
}

// empty empties a row.
func (p *plain) empty(i int) {
	for k := range p.t.Rows[i].Cells {
		p.set(i, k, "")
	}
}

// isType reports whether a cell is the name that scripts have for a kind of value.
func isType(cell string) bool {
	switch cell {
	case "str", "string", "object", "i8", "i16", "i32", "i64", "u8", "u16", "u32", "u64", "f32", "f64", "int", "int32", "int64", "Int64",
		"float", "float64", "double", "bool", "boolean", "cat", "category",
		"<chr>", "<int>", "<dbl>", "<lgl>", "<fct>", "varchar", "bigint":
		return true
	}
	return false
}
