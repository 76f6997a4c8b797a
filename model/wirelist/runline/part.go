package runline

import (
	"strings"

	"contralay/model/wirelist/arrow"
	"contralay/model/wirelist/point"
	"contralay/model/wirelist/value"
)

// Part parts a point in its two ends and what stands behind them, of which values of a wire are cells of their own:
// colour, size, remark, name and, where the line has one, the number of the wire.
func Part(text string) (from, to string, rest []string) {
	if IsValueRange(text) {
		return "", "", nil
	}
	text = ColonsForDashes(value.GaugesJoined(text))
	if from, to, rest = plain(text); from != "" {
		return from, to, rest
	}
	if from, to, rest = behindEnd(text); from != "" {
		return from, to, rest
	}
	if from, to, rest = valuesBefore(text); from != "" {
		return from, to, rest
	}
	if strings.HasSuffix(text, ":") {
		return "", "", nil // a title
	}
	from, to, ok := arrow.Cut(text)
	if _, found := arrow.In(text); found == 0 {
		from, to = cutToLine(text)
		ok = from != ""
	}
	if !ok || from == "" {
		return "", "", nil
	}
	var lead []string
	if before, after, ok := strings.Cut(from, ": "); ok {
		front, in := point.ValuesBehind(before) // "Yellow (20 AWG): coil - → points"
		if point.IsColour(front) {
			lead, from = append([]string{front}, in...), strings.TrimSpace(after)
		}
	}
	signal := ""
	if lead == nil {
		signal, from = labelBefore(from)
	}
	if pin, more, ok := point.Cut(from); ok && more != "" && strings.ContainsAny(from[len(pin):][:1], ".):") &&
		strings.TrimRight(from[len(pin):len(from)-len(more)], " \t") != from[len(pin):len(from)-len(more)] {
		from = more // "1. FC 5V -> …": the number of the point; "P1:A" is an end
	}
	colour, size, note := "", "", ""
	var pieces []string
	if front, remark := remarkBehindValues(to); remark != "" {
		to, note = front, remark
	}
	end, t, ok := bracketsBehind(to)
	if !ok {
		end, t, ok = valuesBehindBrackets(to)
	}
	if ok && lead == nil {
		if signal != "" { // a name stands before the ends already
			signal, t.signal, t.note = "", signal, value.JoinNonEmpty("; ", t.signal, t.note)
		}
		return from, end, []string{t.colour, t.size, value.JoinNonEmpty("; ", signal, note, t.note), t.signal}
	}
	if to, pieces = point.ValuesBehind(to); pieces == nil {
		for _, mark := range []string{", ", ": ", "; ", " - ", " – "} {
			front, back, ok := strings.Cut(to, mark)
			if ok {
				to, pieces = strings.TrimSpace(front), strings.Split(back, mark)
				break
			}
		}
	}
	for _, p := range append(lead, pieces...) {
		p = strings.TrimSpace(p)
		if c, s := point.WireValues(p); c != "" && s != "" && colour == "" && size == "" { // "red 12 AWG"
			colour, size = c, s
			continue
		}
		g, sized := value.ParseGauge(p, value.BareAWG, value.MarkUnknown)
		switch {
		case len(pieces) == 2 && colour == "" && point.AreLetters(p) && point.IsSized(pieces):
			colour = p
		case point.IsColour(p) && colour == "":
			colour = p
		case sized && g.Size != "" && size == "" && strings.Trim(p, "0123456789.,") != "":
			size = p
		default:
			note = value.JoinNonEmpty("; ", note, p)
		}
	}
	return from, to, []string{colour, size, note, signal}
}
