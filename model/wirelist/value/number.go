package value

import (
	"strings"

	"contralay/model/unit"
	"contralay/model/wirelist/table"
)

// Mark is how a list writes its decimals.
type Mark int

// The marks. A list that is parted by something else than commas and has commas in
// its numbers writes MarkComma.
const (
	MarkUnknown Mark = iota
	MarkPoint
	MarkComma
)

// number reads a decimal number, 0 or more. A comma with three digits behind it could
// part thousands: "1,200" is one and a fifth in a list that writes a decimal comma,
// twelve hundred in one that writes a point, and not understood in one that shows
// neither. "1.200" is twelve hundred in a list that writes a decimal comma, else one
// and a fifth. Of both marks in one number the second is the decimal mark.
func (m Mark) number(s string) (float64, bool) {
	points, commas := strings.Count(s, "."), strings.Count(s, ",")
	switch {
	case points == 1 && commas == 1:
		first, second := ".", ","
		if strings.IndexByte(s, ',') < strings.IndexByte(s, '.') {
			first, second = ",", "."
		}
		a, b, _ := strings.Cut(s, first)
		if len(a) == 0 || len(a) > 3 || strings.IndexByte(b, second[0]) != 3 {
			return 0, false
		}
		s = strings.Replace(a+b, second, ".", 1)
	case points+commas > 1:
		return 0, false
	case commas == 1 && m == MarkPoint && couldBeThousands(s, ','), points == 1 && m == MarkComma && couldBeThousands(s, '.'):
		s = strings.NewReplacer(",", "", ".", "").Replace(s)
	case commas == 1 && m == MarkUnknown && couldBeThousands(s, ','):
		return 0, false
	}
	v, err := unit.ParseNumber(s)
	return v, err == nil && v >= 0
}

// couldBeThousands reports whether s is one to three digits that do not start with 0, the mark,
// three digits.
func couldBeThousands(s string, mark byte) bool {
	i := strings.IndexByte(s, mark)
	return i >= 1 && i <= 3 && s[0] != '0' && len(s)-i-1 == 3
}

// MarksOf looks at how a list writes its numbers.
func MarksOf(t *table.Table) Mark {
	comma, point := 0, 0
	for _, r := range t.Rows {
		for _, c := range r.Cells {
			for i := 1; i+1 < len(c) && len(c) < 24; i++ {
				if (c[i] != ',' && c[i] != '.') || !IsDigit(c[i-1]) || !IsDigit(c[i+1]) || couldBeThousands(c, c[i]) {
					continue
				}
				if c[i] == ',' && strings.Count(c, ",") == 1 {
					comma++
				} else if c[i] == '.' && strings.Count(c, ".") == 1 {
					point++
				}
			}
		}
	}
	switch {
	case comma > point && t.Comma:
		return MarkComma
	case point > 0 && comma == 0:
		return MarkPoint
	}
	return MarkUnknown
}
