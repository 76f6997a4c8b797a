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
				x.strings = append(x.strings, marked(text.String()))
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

// readStyles finds the styles that strike a text out, and those that show a number as a date: a
// cavity "1-2" that a spreadsheet took for one is then seen for what it is. Built-in formats 14
// to 22 and 45 to 47 are dates and times (ECMA-376 part 1, 18.8.30).
func (x *xlsxBook) readStyles(part string) error {
	custom := map[string]bool{}
	inXfs, inFonts := false, false
	var fonts []bool // struck out
	return x.walk(part, visitor{
		start: func(e element) error {
			switch e.name {
			case "numFmt":
				custom[e.attr("numFmtId")] = isDateFormat(e.attr("formatCode"))
			case "fonts":
				inFonts = true
			case "font":
				if inFonts {
					fonts = append(fonts, false)
				}
			case "strike":
				if inFonts && len(fonts) > 0 {
					fonts[len(fonts)-1] = e.attr("val") == "" || e.yes("val")
				}
			case "cellXfs":
				inXfs = true
			case "xf":
				if inXfs {
					n := e.number("numFmtId", 0)
					x.dates = append(x.dates, custom[e.attr("numFmtId")] || n >= 14 && n <= 22 || n >= 45 && n <= 47)
					f := e.number("fontId", -1)
					x.struck = append(x.struck, f >= 0 && f < len(fonts) && fonts[f])
				}
			}
			return nil
		},
		end: func(name string) error {
			switch name {
			case "cellXfs":
				inXfs = false
			case "fonts":
				inFonts = false
			}
			return nil
		},
	})
}

// isDateFormat reports whether a format shows day, month or year outside quotation marks,
// brackets and escapes.
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
