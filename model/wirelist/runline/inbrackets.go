package runline

import "strings"

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
