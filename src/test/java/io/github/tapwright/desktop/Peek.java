package io.github.tapwright.desktop;
import java.nio.file.Path;
import javafx.scene.input.KeyCode;
public class Peek {
  public static void main(String[] a) throws Exception {
    Thread t = new Thread(() -> Launch.main(new String[]{"--archive=" + a[0]})); t.setDaemon(true); t.start();
    Hand h = Hand.onWindow();
    h.size(Double.parseDouble(a[1]), Double.parseDouble(a[2]));
    Hand.rest(1500);
    for (int i = 4; i < a.length; i++) {
      String s = a[i];
      if (s.startsWith("click:")) h.click(s.substring(6));
      else if (s.startsWith("rest:")) Hand.rest(Long.parseLong(s.substring(5)));
      else if (s.startsWith("type:")) h.type(s.substring(5));
      else if (s.startsWith("focus:")) h.focus(s.substring(6));
      else if (s.startsWith("shot:")) h.photograph(Path.of(s.substring(5)));
      else { KeyCode[] k = java.util.Arrays.stream(s.split("\\+")).map(x -> KeyCode.valueOf(x.toUpperCase())).toArray(KeyCode[]::new); h.press(k); }
      Hand.rest(500);
    }
    h.photograph(Path.of(a[3]));
    System.exit(0);
  }
}
