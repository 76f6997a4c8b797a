package words

import "contralay/model/wirelist/table"

// WithoutPad takes the word for the places of a board off a heading, "FC pad".
func WithoutPad(head string) string {
	w := []rune(head)
	for _, tail := range []string{" pad", " pads", " lug", " tab"} {
		if n := len(w) - len([]rune(tail)); n > 0 && table.Fold(string(w[n:])) == tail {
			return string(w[:n])
		}
	}
	return head
}
