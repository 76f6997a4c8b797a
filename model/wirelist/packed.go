package wirelist

func readPacked(name string, data []byte, l Limits) ([]Table, error) {
	return nil, &Error{Place{File: name}, "TODO", ""}
}
