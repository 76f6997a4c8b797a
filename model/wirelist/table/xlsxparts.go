package table

import (
	"fmt"
	"strings"
)

// readStrings reads the texts that cells share; how letters are spoken is left out.
func (x *xlsxBook) readStrings(part string) error {
	var text strings.Builder
	in, spoken := false, 0
	return x.walk(part, visitor{
		start: func(e element) error {
			switch e.name {
			case "si":
				text.Reset()
			case "t":
				in = spoken == 0
			case "rPh":
				spoken++
			}
			return nil
		},
		end: func(name string) error {
			switch name {
			case "si":
				if len(x.strings) >= x.l.Cells {
					return x.refuse("", "has too many texts", fmt.Sprintf("up to %d", x.l.Cells))
				}
				x.strings = append(x.strings, Tidy(text.String()))
			case "t":
				in = false
			case "rPh":
				spoken--
			}
			return nil
		},
		text: func(s []byte) {
			if in {
				text.Write(s)
			}
		},
	})
}

// readStyles finds the styles that show a number as a date: a cavity "1-2" that a
// spreadsheet took for one is then seen for what it is. Built-in formats 14 to 22 and
// 45 to 47 are dates and times (ECMA-376 part 1, 18.8.30).
func (x *xlsxBook) readStyles(part string) error {
	custom := map[string]bool{}
	inXfs := false
	return x.walk(part, visitor{
		start: func(e element) error {
			switch e.name {
			case "numFmt":
				custom[e.attr("numFmtId")] = isDateFormat(e.attr("formatCode"))
			case "cellXfs":
				inXfs = true
			case "xf":
				if inXfs {
					n := e.number("numFmtId", 0)
					x.dates = append(x.dates, custom[e.attr("numFmtId")] || n >= 14 && n <= 22 || n >= 45 && n <= 47)
				}
			}
			return nil
		},
		end: func(name string) error {
			if name == "cellXfs" {
				inXfs = false
			}
			return nil
		},
	})
}

// isDateFormat: day, month or year outside quotation marks, brackets and escapes.
func isDateFormat(code string) bool {
	quoted, bracket := false, false
	for i := 0; i < len(code); i++ {
		switch c := code[i]; {
		case c == '\\':
			i++
		case c == '"':
			quoted = !quoted
		case quoted:
		case c == '[':
			bracket = true
		case c == ']':
			bracket = false
		case !bracket && strings.IndexByte("dDyY", c) >= 0:
			return true
		}
	}
	return false
}
