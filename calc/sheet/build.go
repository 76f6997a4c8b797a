package sheet

// Say adds an open point: how bad, by which rule, about what, in a sentence.
func (s *Sheet) Say(l Level, rule, where, says string) {
	s.Snags = append(s.Snags, Snag{Level: l, Rule: rule, Where: where, Says: says})
}

// SayLike is say for what has its cause in common with others that say it otherwise.
func (s *Sheet) SayLike(l Level, rule, where, like, says string) {
	s.Snags = append(s.Snags, Snag{l, rule, where, says, like})
}
