package value

import "strings"

// wireType reports whether a folded word is the trade's name of a type of wire that the catalogue has no table of, and whether its sizes
// are cross sections: "GPT 18 red", "AVSS 0.85 G". From memory, no source.
func wireType(w string) (is, metric bool) {
	switch w {
	case "gpt", "hdt", "sgt", "sgx", "stx", "mtw", "thhn", "thwn", "tffn":
		return true, false
	case "avs", "avss", "avssh", "avx", "aesx", "civus", "cavs", "flr2x", "h05v-k", "h07v-k", "h05v-u", "h07v-u", "h05vk", "h07vk", "lify":
		return true, true
	}
	digits, ul := strings.CutPrefix(w, "ul") // "UL1007"
	return ul && len(digits) == 4 && strings.Trim(digits, "0123456789") == "", false
}
