package alike

import (
	"regexp"
	"strings"

	"contralay/model/wirelist/name"
	"contralay/model/wirelist/table"
)

// labelForm is a line that begins with letters and a number and a sign behind them, which can be the label of a wire or a cavity.
var labelForm = regexp.MustCompile(`^([A-Za-z]{1,3}[-_]?\d{1,4}[a-z]?)[:.)]\s+(.+)$`)

// Labelled gives the lines of a sheet, of some that are written in one way, that begin with the label of their wire, no cavity: no label
// comes again, what stands before the word "to" is a device and its terminal in most of them, and one of those devices is the far end
// of another wire. What a cavity is for names no device that another one goes to. nil where they do not.
//
//	B3: battery switch terminal C to panel stud, 16 mm², red        N4: cabin splice to galley light, 1.5 mm², white
func Labelled(texts []string) map[string]bool {
	lines, labels := map[string]bool{}, map[string]bool{}
	var nears []string
	fars := map[string]bool{}
	for _, t := range texts {
		m := labelForm.FindStringSubmatch(t)
		if m == nil {
			continue
		}
		near, far := aroundTo(m[2])
		if near == "" || far == "" {
			continue
		}
		label := strings.ToUpper(m[1])
		if labels[label] {
			return nil
		}
		labels[label], lines[t] = true, true
		nears = append(nears, near)
		fars[table.Fold(far)], fars[deviceOf(far)] = true, true
	}
	ends, again := 0, 0
	for _, near := range nears {
		device := deviceOf(near)
		chained := fars[table.Fold(near)] || device != "" && fars[device]
		if chained {
			again++
		}
		if chained || saysEnd(near) || endsInPole(near) {
			ends++
		}
	}
	if len(nears) < 3 || again < 2 || 4*ends < 3*len(nears) {
		return nil
	}
	return lines
}

// LabelledRuns is Runs for lines that Labelled gives.
func LabelledRuns(texts []string) (lines []Line, ok bool) {
	for _, t := range texts {
		if !labelForm.MatchString(t) {
			return nil, false
		}
	}
	return runs(texts, true)
}

// aroundTo is what stands before the one word that says where the wire goes, and behind it up to the next mark.
func aroundTo(text string) (near, far string) {
	for _, word := range toWords {
		a, b, ok := strings.Cut(text, word)
		if !ok || strings.Contains(b, word) {
			continue
		}
		if at := strings.LastIndexAny(a, ",;"); at >= 0 {
			a = a[at+1:]
		}
		if at := strings.IndexAny(b, ",;("); at >= 0 {
			b = b[:at]
		}
		a, b = strings.TrimSpace(a), strings.TrimSpace(b)
		if isShort(a) && isShort(b) {
			return a, b
		}
	}
	return "", ""
}

// deviceOf is the device of an end that says its terminal, in small letters; "" where it says none.
func deviceOf(end string) string {
	device, _, ok := name.SplitEnd(end)
	if at := strings.LastIndexByte(end, ' '); !ok && at > 0 && (saysPin(end[at+1:]) || endsInPole(end)) {
		device, ok = end[:at], true
	}
	if !ok {
		return ""
	}
	return table.Fold(strings.TrimSpace(device))
}

// endsInPole reports whether the last word of an end is a pole of its device.
func endsInPole(end string) bool {
	at := strings.LastIndexByte(end, ' ')
	if at < 0 {
		return false
	}
	switch table.Fold(end[at+1:]) {
	case "plus", "minus", "pos", "neg", "positive", "negative", "stud", "+", "-":
		return true
	}
	return false
}
