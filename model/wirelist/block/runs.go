package block

import (
	"slices"
	"strings"

	"contralay/model/wirelist/arrow"
	"contralay/model/wirelist/name"
	"contralay/model/wirelist/padlines"
	"contralay/model/wirelist/runline"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/value"
	"contralay/model/wirelist/words"
)

// runs is how many rows from one on are points that tell a wire each, by both of its ends and an arrow between; 0 where they
// are none.
//
//   - FC 5V -> GPS VCC (red)
//   - FC G3 -> GPS GND (black)
func (f *finder) runs(i int) int {
	n, wires := 0, 0
	for _, r := range f.t.Rows[i:] {
		if len(r.Cells) != 1 || f.t.Marked && !r.Prose || r.Level > 0 || n > 0 && r.Line > f.t.Rows[i+n-1].Line+2 {
			break
		}
		from, to, _, free := f.runOrFree(r)
		if n == 0 && (together{f}).headsRuns(from, to) {
			break
		}
		if from == "" || to == "" || len(from) > mostHead || len(to) > mostHead || isFullSentence(to) {
			break
		}
		if n++; !free {
			wires++
		}
	}
	if wires < 2 && !slices.ContainsFunc(f.all, func(b Block) bool { return b.Runs }) {
		return 0
	}
	return n
}

// headsRuns reports whether a line only says what stands in those below: "core - colour - use - from -> to".
func (f together) headsRuns(from, to string) bool {
	if at := strings.LastIndexAny(from, "-–|;,"); at >= 0 {
		from = from[at+1:]
	}
	word := func(s string) name.Field { return f.h.Words[table.Fold(strings.Trim(s, " *`_:"))].Field }
	return word(from) == name.FieldFrom && word(to) == name.FieldTo
}

func isFullSentence(text string) bool {
	return strings.HasSuffix(text, ".") && len(strings.Fields(text)) > 4
}

// leads makes the block of a list of both ends. An end of two words and more of which the first ones come again is a device
// and a pad of it.
func (f *finder) leads(points []table.Row) {
	b := Block{Table: f.t, Path: slices.Clone(f.path), Titles: f.titles(), Runs: true}
	nearOf, farOf, headed := f.ownHead(points)
	if headed {
		b.Titles, points = append(b.Titles, points[0]), points[1:]
	} else {
		nearOf, farOf = f.runDevices(b.Titles, points)
	}
	ofNear, ofFar := "", ""
	if nearOf == "" && !f.ends[points[0].Line].Whole {
		ofNear, ofFar = f.headedSides(&b, points)
	}
	var devices map[string]int
	if ofNear != "" {
		devices = f.farDevices(points)
	}
	var lines []string
	for _, r := range runline.Apart(points) {
		lines = append(lines, strings.Join(r.Cells, " "))
		from, to, rest, _ := f.runOrFree(r)
		to = runline.GaugeBehind(to, rest)
		if bare, colour, size := padlines.Values(from); ofNear != "" && rest[0] == "" && (rest[1] == "" || colour != "" && size == "") {
			from, rest[0] = bare, colour
			if size != "" {
				rest[1] = size // "green → T1 terminal 7, 1 mm²" has its own
			}
		}
		for _, k := range []int{2, 3} { // what is taken for the remark or the name
			if f.takeValues(rest[k], rest) {
				rest[k] = ""
			}
		}
		for k, e := range []*string{&from, &to} {
			bare, remark := arrow.RemarkBehind(*e, nearOf != "" || k == 0 && ofNear != "" || k == 1 && ofFar != "")
			if *e = bare; remark != "" && !f.takeValues(remark, rest) {
				rest[2] = value.JoinNonEmpty("; ", rest[2], bare+": "+remark)
			}
		}
		near, nearPad := f.pad(from)
		far, farPad := f.pad(to)
		switch {
		case nearOf == "" || farOf == "" || !isPad(from):
		case isPad(to):
			near, nearPad, far, farPad = nearOf, from, farOf, to
		case name.StateOf(to) == name.Blank:
			near, nearPad, far, farPad = nearOf, from, to, ""
		}
		if ofNear != "" {
			near, nearPad = ofNear, name.WithoutPinWord(from)
			if device, pad, ok := padOf(to, devices); ok && farPad == "" {
				far, farPad = device, pad
			}
		}
		if ofFar != "" {
			far, farPad = ofFar, name.WithoutPinWord(to)
		}
		for _, e := range [][2]*string{{&near, &nearPad}, {&far, &farPad}} {
			if *e[1] == "-" { // the pole, and no dash that fills a cell
				*e[0], *e[1] = *e[0]+":-", ""
			}
		}
		r.Cells, r.Prose, r.Point = append([]string{near, nearPad, far, farPad}, rest...), false, false
		b.Rows = append(b.Rows, r)
	}
	runline.Poles(b.Rows, lines)
	runline.RemarksBehind(b.Rows, lines)
	runline.SizesOfNotes(b.Rows)
	runline.LabelIDs(b.Rows)
	runline.NamesBehind(b.Rows)
	runline.Lengths(b.Rows)
	f.close()
	f.all = append(f.all, b)
}

// pad parts "FC 5V" in device and pad, where "FC" begins another end of the sheet too.
func (f *finder) pad(end string) (device, pad string) {
	if strings.Contains(end, ":") {
		return end, ""
	}
	if runline.IsPlainEnd(end) {
		device, pad, _ = name.SplitEnd(end)
		return device, pad
	}
	if runline.IsLooseEnd(end) && f.looseEnds() {
		device, pad, _ = name.SplitEnd(end)
		return device, pad
	}
	if w := strings.Fields(end); len(w) > 2 && name.IsPinWord(table.Fold(w[len(w)-2])) {
		device, pad, _ = name.SplitEnd(end) // "Box pin 4"
		return device, pad
	}
	at := strings.LastIndexByte(end, ' ')
	if at > 0 && runline.IsPlainEnd(end[at+1:]) { // "Box X1/4"
		plug, pin, _ := name.SplitEnd(end[at+1:])
		return end[:at+1] + plug, pin
	}
	if of, pin, ok := name.SplitEnd(end); ok && name.SaysPin(end) {
		return of, pin
	}
	if at > 0 && strings.Contains("+ - −", end[at+1:]) { // "Battery +"
		return end[:at], strings.ReplaceAll(end[at+1:], "−", "-")
	}
	if at < 0 || len(end)-at > 9 || strings.Trim(end[at+1:], "0123456789") == "" || isDevice(table.Fold(end[at+1:])) {
		return end, "" // all ends together tell whether a number is a pad
	}
	if of := f.heads()[end[:at+1]]; !of.several && (of.first == "" || of.first == end) || of.things {
		return end, "" // "oil sender" and "oil gauge" are two devices
	}
	device = strings.TrimSpace(end[:at])
	for _, word := range []string{" pin", " pad"} {
		device = strings.TrimSuffix(device, word)
	}
	return device, end[at+1:]
}

// isDevice reports whether a folded word is of a device and never of its pad.
func isDevice(w string) bool {
	return name.IsDeviceWord(w) || w == "sender" || w == "gauge" || w == "probe" || w == "geber"
}

// padHead is what begins some ends of a sheet, up to the last blank: the first of these ends, whether another differs, and whether
// the last word of each is a thing that wires are taken to.
type padHead struct {
	first           string
	several, things bool
}

// heads are these of the whole sheet, looked for once.
func (f *finder) heads() map[string]padHead {
	if f.padHeads != nil {
		return f.padHeads
	}
	f.padHeads = map[string]padHead{}
	for _, r := range f.t.Rows {
		if len(r.Cells) != 1 {
			continue
		}
		from, to, _ := f.run(r)
		for _, e := range []string{from, to} {
			if at := strings.LastIndexByte(e, ' '); at > 0 {
				h := f.padHeads[e[:at+1]]
				last := e[at+1:]
				thing := words.IsThing(last) && last != strings.ToUpper(last)
				if h.things = thing && (h.things || h.first == ""); h.first == "" {
					h.first = e
				}
				h.several = h.several || h.first != e
				f.padHeads[e[:at+1]] = h
			}
		}
	}
	return f.padHeads
}
