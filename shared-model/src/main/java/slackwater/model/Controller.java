package slackwater.model;

import java.util.Optional;
import slackwater.model.board.Board;

/** A computer in the yard, with the outputs and inputs wired to it. */
public record Controller(String name, Board board, Optional<HoldUp> holdUp) {}
