package bothends

import (
	"fmt"
	"slices"
	"strings"
	"unicode"

	"contralay/model/wirelist/column"
	"contralay/model/wirelist/name"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/sidehead"
	"contralay/model/wirelist/signoff"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/value"
)

// crimpedTwins are the columns of terminals of both sides where the ends of both tell their cavities and the terminals are types of part:
// a type is used at several ends, and no type is a number. Splices and studs among the ends have no cavity.
//
//	End A  | Strip | Term | End B | Strip | Term
//	J21-1  | 4     | Z16  | F3-A  | 6     | Q187
//	J21-2  | 4     | Z16  | SP4   | 9     | SPL
//
// They are not what a cavity is: a device with several terminals "J21-1" and "J21-2" has its cavity in its name already.
func crimpedTwins(cols []shape.Column, prof []column.Profile, rows []table.Row) (of []int) {
	ends := []int{-1, -1}
	var pins, unknown [2][]int
	for i := range min(len(cols), len(prof)) {
		c := &cols[i]
		if prof[i].Filled == 0 || c.Given {
			continue
		}
		behind := 0
		if ends[1] >= 0 {
			behind = 1
		}
		fitting := headsTerminal(c.Head)
		switch {
		case c.Field == name.FieldFrom && ends[0] < 0:
			ends[0] = i
		case c.Field == name.FieldTo && ends[1] < 0:
			ends[1] = i
		case c.Field == name.FieldFromPin && fitting:
			pins[0] = append(pins[0], i)
		case c.Field == name.FieldToPin && fitting:
			pins[1] = append(pins[1], i)
		case c.Field == name.FieldPin && fitting:
			pins[behind] = append(pins[behind], i)
		case c.Field == name.FieldKeep && fitting && !c.Spared:
			unknown[behind] = append(unknown[behind], i)
		case c.Field == name.FieldFrom || c.Field == name.FieldTo || c.Field == name.FieldFromPin || c.Field == name.FieldToPin ||
			c.Field == name.FieldPin:
			return nil
		}
	}
	if ends[0] < 0 || ends[1] < 0 || !tellCavities(rows, ends) {
		return nil
	}
	if pins[0] != nil || pins[1] != nil {
		if !areTypes(rows, ends, pins) {
			return nil
		}
		of = slices.Concat(pins[0], pins[1])
	}
	for side := range unknown {
		unknown[side] = slices.DeleteFunc(unknown[side], func(i int) bool { return prof[i].Most(prof[i].Numbers) })
	}
	if areTypes(rows, ends, unknown) {
		of = slices.Concat(of, unknown[0], unknown[1])
	}
	return of
}

// tellCavities reports whether most cells of two columns are a device and its cavity, with several cavities of one device, and the
// others are a name alone.
func tellCavities(rows []table.Row, ends []int) bool {
	parted, bare, several := 0, 0, false
	first := map[string]string{}
	for _, r := range rows[:min(len(rows), column.MostLooked)] {
		if shape.IsText(r) {
			continue
		}
		for _, i := range ends {
			if i >= len(r.Cells) || value.IsNothing(r.Cells[i]) || signoff.IsTotal(r.Cells[i]) {
				continue
			}
			device, pin, ok := name.SplitEnd(r.Cells[i])
			if !ok || !name.IsDesignator(device) || !name.IsCavity(pin) {
				bare++
				continue
			}
			parted++
			if was, known := first[device]; known && was != pin {
				several = true
			}
			first[device] = pin
		}
	}
	return several && parted > 2 && parted > bare
}

// areTypes reports whether the cells of the columns of each side are types of part at its ends: each has three signs and a letter or more,
// some are used again, and no cavity has two.
func areTypes(rows []table.Row, ends []int, of [2][]int) bool {
	const shortest = 3 // bytes: "M14", "SPL" (no source)
	n, types, at := 0, map[string]bool{}, map[string]string{}
	for _, r := range rows[:min(len(rows), column.MostLooked)] {
		if shape.IsText(r) {
			continue
		}
		for side := range of {
			for _, i := range of[side] {
				if i >= len(r.Cells) || value.IsNothing(r.Cells[i]) {
					continue
				}
				part := table.Fold(r.Cells[i])
				if len(part) < shortest || !strings.ContainsFunc(part, unicode.IsLetter) {
					return false
				}
				if k := ends[side]; k < len(r.Cells) && strings.ContainsAny(r.Cells[k], "-:./") {
					end := fmt.Sprint(i, r.Cells[k])
					if was := at[end]; was != "" && was != part {
						return false
					}
					at[end] = part
				}
				n++
				types[part] = true
			}
		}
	}
	return n > 2 && 4*len(types) <= 3*n
}

// TwinEnds takes two columns whose headings are the words of the two sides for the ends, where no column is known for one and most cells of
// both tell a device and its cavity; what stands behind each of them in columns of terminals is of its side.
//
//	Wire | Left  | Contact | Right | Contact
//	501  | J21:1 | Z16     | F3:A  | Q187
func TwinEnds(cols []shape.Column, prof []column.Profile, rows []table.Row) {
	a, b := -1, -1
	for i := range min(len(cols), len(prof)) {
		switch f := cols[i].Field; {
		case cols[i].Given || f == name.FieldFrom || f == name.FieldTo || f == name.FieldConnector || f == name.FieldRun:
			return
		case prof[i].Filled == 0 || f == name.FieldPin:
		case a < 0 && hasTwin(cols, i):
			a = i
		case a >= 0 && b < 0 && headsTwins(cols[a].Head, cols[i].Head):
			b = i
		}
	}
	if b < 0 || !tellCavities(rows, []int{a, b}) {
		return
	}
	cols[a].Field, cols[b].Field = name.FieldFrom, name.FieldTo
	cols[a].Know()
	cols[b].Know()
	for i := range cols {
		if cols[i].Field != name.FieldPin || !headsTerminal(cols[i].Head) || i < a {
			continue
		}
		if cols[i].Field = name.FieldFromPin; i > b {
			cols[i].Field = name.FieldToPin
		}
	}
}

// hasTwin reports whether a column behind one is headed by the other side.
func hasTwin(cols []shape.Column, i int) bool {
	return slices.ContainsFunc(cols[i+1:], func(c shape.Column) bool { return headsTwins(cols[i].Head, c.Head) })
}

// headsTwins reports whether two headings are the words of the two sides, alone or behind a word for an end: "Left" and "Right", "Side 1"
// and "Side 2".
func headsTwins(a, b string) bool {
	one, other := wordsOf(a), wordsOf(b)
	if len(one) == 1 && len(other) == 1 {
		return slices.Contains(sides, [2]string{one[0], other[0]})
	}
	rest, ok := withoutSides(a, b)
	return ok && len(rest) == 1 && sidehead.IsEndWord(rest[0])
}
