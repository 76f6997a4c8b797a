package paper

import (
	"html"
	"strings"
	"testing"
)

func TestSoft(t *testing.T) {
	for in, want := range map[string]string{
		"M39029/58-363":                     "M39029/58-363", // whole
		"a < b & c":                         "a &lt; b &amp; c",
		"PDM/OUT/INJECTOR/BANK1":            "PDM/<wbr>OUT/<wbr>INJECTOR/<wbr>BANK1",
		"see ABCDEFGHIJKLMNOPQRSTUVWXYZ ok": "see ABCDEFGHIJKLMN<wbr>OPQRSTUVWXYZ ok",
		"<script>alert(1)</script>":         "&lt;script&gt;alert(<wbr>1)&lt;/<wbr>script&gt;",
		"":                                  "",
		"ÄÖÜäöüßÄÖÜäöüßÄ-x":                 "ÄÖÜäöüßÄÖÜäöüß<wbr>Ä-x",
	} {
		got := string(soft(in))
		if got != want {
			t.Errorf("%q: %q, want %q", in, got, want)
		}
		if back := html.UnescapeString(strings.ReplaceAll(got, "<wbr>", "")); back != in {
			t.Errorf("%q reads %q", in, back)
		}
	}
}
