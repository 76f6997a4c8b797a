package wirelist

import (
	"slices"
	"strings"

	"contralay/model/wirelist/abreast"
	"contralay/model/wirelist/draft"
	"contralay/model/wirelist/huekey"
	"contralay/model/wirelist/lineletters"
	"contralay/model/wirelist/report"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/table"
)

// colourKey takes in the lines of the lists that say what their short forms of colours mean, and gives the tables without those that say
// nothing else.
func colourKey(im *draft.Importer, tables []table.Table) []table.Table {
	out := slices.Clone(tables)
	for i := range out {
		t := &out[i]
		var kept []table.Row // nil as long as no line is taken out
		last := -1           // the line of the last that was
		keys := abreast.Each(len(t.Rows), func(k int) huekey.ColourKey { return keyIn(t, k) })
		for k, r := range t.Rows {
			if len(r.Cells) > 1 && t.Marked {
				if kept != nil {
					kept = append(kept, r)
				}
				continue
			}
			key, text, goesOn := keys[k], "", last > 0 && r.Line == last+1
			if key != nil || goesOn {
				text = shape.RowText(r.Cells)
			}
			if only := onlyKey(key, text, r.Level, goesOn); only != nil {
				key, last = only, r.Line
				if kept == nil {
					kept = slices.Clone(t.Rows[:k])
				}
			} else if kept != nil {
				kept = append(kept, r)
			}
			if key == nil {
				continue
			}
			takeKey(im, t.File, key)
			im.Say(report.Note, "key to the colours", table.Place{File: t.File, Sheet: t.Sheet, Row: r.Line}, strings.TrimSpace(text),
				readByKey)
		}
		if kept != nil {
			t.Rows = kept
		}
		writeLetters(im, t)
	}
	return out
}

// writeLetters writes out the letters of colours at the ends of the lines of a text; where the lists give no key to them, a person should
// look.
func writeLetters(im *draft.Importer, t *table.Table) {
	if im.Opt.Recipe != nil && len(im.Opt.Recipe.Colours) > 0 {
		return
	}
	key := im.Keys[t.File]
	rows, lines := lineletters.Rows(t.Rows, key)
	if lines == nil {
		return
	}
	if t.Rows = rows; key == nil {
		im.Doubt(noKey, table.Place{File: t.File, Sheet: t.Sheet, Row: lines[0].Line}, "", asOldLetters, lines)
	}
}

// onlyKey is what a line that says nothing else says of colours: the line is a key itself, or it goes on with the one above it.
func onlyKey(key huekey.ColourKey, text string, level int, goesOn bool) huekey.ColourKey {
	if level > 0 || key == nil && !goesOn {
		return nil
	}
	return huekey.OnlyKey(text, goesOn)
}

// keyIn is what a row of a table says of short forms of colours; nil of most.
func keyIn(t *table.Table, i int) huekey.ColourKey {
	r := &t.Rows[i]
	if len(r.Cells) > 1 && t.Marked {
		return nil
	}
	text := shape.RowText(r.Cells)
	key := huekey.ReadColourKey(text)
	if key == nil && strings.Contains(text, "=") {
		key = huekey.KeyOfLegend(r.Cells)
	}
	return key
}
