package slackwater.controller.live;

/** Where one clear line for a person goes. Callable from any thread. */
public interface Say {
    void line(String text);
}
