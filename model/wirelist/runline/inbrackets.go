package runline

import (
	"strings"

	"contralay/model/wirelist/name"
	"contralay/model/wirelist/point"
)

// bracketsBehind parts what stands in brackets behind the far end of a line off it, where that is several things and one of them is a
// value of the wire: "two step button (launch, yellow)".
func bracketsBehind(to string) (end string, t tail, ok bool) {
	for _, pair := range []string{"()", "[]", "{}"} {
		open := strings.LastIndex(to, " "+pair[:1])
		if open < 1 || !strings.HasSuffix(to, pair[1:]) {
			continue
		}
		in := to[open+2 : len(to)-1]
		if strings.ContainsAny(in, pair) || !strings.ContainsAny(in, ",;/:") && !strings.Contains(in, " - ") {
			continue
		}
		t = tailOf("(" + in + ")")
		return strings.TrimRight(to[:open], " ,;:"), t, (t.colour != "" || t.size != "") && t.signal != ""
	}
	return to, t, false
}

// valuesBehindBrackets parts the name of a wire in brackets and its values behind them off a far end: "lid switch (lid open) green".
func valuesBehindBrackets(to string) (end string, t tail, ok bool) {
	open, shut := strings.Index(to, " ("), strings.LastIndexByte(to, ')')
	if open < 1 || shut < open || strings.Count(to, "(") > 1 || strings.Count(to, ")") > 1 {
		return to, t, false
	}
	called, behind := strings.TrimSpace(to[open+2:shut]), strings.TrimLeft(to[shut+1:], " ,;:-–—")
	t = tailOf(behind)
	if behind == "" || t.signal != "" || t.note != "" || !point.IsShortName(called) || name.IsCavity(called) {
		return to, t, false
	}
	t.signal = called
	return to[:open], t, t.colour != "" || t.size != ""
}
