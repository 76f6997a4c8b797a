package grouphead

// TakenAsFar is said of a heading that names the far end.
const TakenAsFar = "taken as the far end of the rows below it, "

// LeftOutBut says what is done with a text, which may name the near end of the rows below it.
func LeftOutBut(end string) string {
	if end == "" {
		return "left out"
	}
	return "taken as the near end of the rows below it, " + end
}
