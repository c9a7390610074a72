package slackwater.model.board;

import java.util.List;
import java.util.Locale;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import slackwater.model.Pull;

/** The boards with the 40-pin header. They differ in the chip behind it, not in what stands on which pin. */
enum RaspberryPi implements Board {
    PI_3(""),
    PI_4(""),
    /** Its header hangs on a chip of its own, RP1; that its pulls are the older boards' is from memory. */
    PI_5("The pulls at reset of this board are from memory, not from its data sheet:"
            + " measure them before a load is wired."),
    PI_ZERO_2_W("");

    /** Physical pins 1 to 40 (handbook 3.10). */
    private static final List<String> SIGNALS = List.of(
            "3V3", "5V", "GPIO2", "5V", "GPIO3", "GND", "GPIO4", "GPIO14", "GND", "GPIO15", "GPIO17", "GPIO18",
            "GPIO27", "GND", "GPIO22", "GPIO23", "3V3", "GPIO24", "GPIO10", "GND", "GPIO9", "GPIO25", "GPIO11", "GPIO8",
            "GND", "GPIO7", "GPIO0", "GPIO1", "GPIO5", "GND", "GPIO6", "GPIO12", "GPIO13", "GND", "GPIO19", "GPIO16",
            "GPIO26", "GPIO20", "GND", "GPIO21");

    private static final int LAST_ON_HEADER = 27;
    private static final int LAST_IN_TABLE = 53;

    private static final List<Integer> HEADER =
            IntStream.rangeClosed(0, LAST_ON_HEADER).boxed().toList();

    private final String caveat;

    RaspberryPi(final String caveat) {
        this.caveat = caveat;
    }

    @Override
    public String word() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    @Override
    public List<Integer> header() {
        return HEADER;
    }

    @Override
    public OptionalInt headerPin(final int gpio) {
        final int index = SIGNALS.indexOf("GPIO" + gpio);
        return index < 0 ? OptionalInt.empty() : OptionalInt.of(index + 1);
    }

    @Override
    public List<String> signals() {
        return SIGNALS;
    }

    /** BCM2835 ARM Peripherals Table 6-31, by way of handbook 3.9; 0 to 53. */
    @Override
    public Pull pullAtReset(final int gpio) {
        if (gpio < 0 || gpio > LAST_IN_TABLE) {
            throw new IllegalArgumentException("gpio=" + gpio + " is not in 0.." + LAST_IN_TABLE);
        }
        if (gpio <= 8 || isWithin(gpio, 34, 36) || gpio >= 46) {
            return Pull.UP;
        }
        return isWithin(gpio, 28, 29) || isWithin(gpio, 44, 45) ? Pull.NONE : Pull.DOWN;
    }

    @Override
    public String lifeAtBoot(final int gpio) {
        return switch (gpio) {
            case 0, 1 -> "probed for an add-on board's memory at every boot; leave it unconnected";
            case 2 -> "fixed 1.8 kOhm pull-up to 3.3 V on the board";
            case 3 -> "fixed 1.8 kOhm pull-up to 3.3 V on the board; low wakes a halted board";
            case 14 -> "serial output on many images: high and chattering during boot";
            case 15 -> "serial input on many images: its pull may change during boot";
            default -> "";
        };
    }

    @Override
    public String lifeIfEnabled(final int gpio) {
        if (gpio == 4) {
            return "one-wire bus if the image enables it";
        }
        return isWithin(gpio, 7, 11) || isWithin(gpio, 16, 21) ? "SPI bus if the image enables it" : "";
    }

    @Override
    public String caveat() {
        return caveat;
    }

    private static boolean isWithin(final int gpio, final int first, final int last) {
        return gpio >= first && gpio <= last;
    }
}
