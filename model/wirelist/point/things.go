package point

import (
	"strings"

	"contralay/model/wirelist/name"
	"contralay/model/wirelist/table"
)

// CountThings reports whether some points count things, and name no cavities: each begins with a number and a word right behind it, and
// the numbers do not rise.
//
//   - 4 seals for the plug
//   - 2 housings
func CountThings(points []table.Row) bool {
	last, falls := 0, false
	for _, r := range points {
		number, rest, _ := strings.Cut(r.Cells[0], " ")
		if rest == "" && name.IsCavity(number) && strings.Trim(number, "0123456789") != "" {
			continue // "HX711", a part
		}
		at := name.Ordinal(number)
		if at == 0 || rest == "" || strings.IndexByte("-:=.)(", rest[0]) >= 0 || strings.HasPrefix(rest, "–") || IsColour(rest) ||
			name.StateOf(rest) != name.Used {
			return false
		}
		falls = falls || at <= last
		last = at
	}
	return falls
}
