# The figure laid over a film, and gravity in its marks.

overlay-no-pair = Markiere Kopf und Füße in einem Bild des Flugs: Daran sieht man, wie groß die springende Person im Bild ist.
overlay-rate-right = Die Marken fallen, wie die Schwerkraft sie fallen lässt, also stimmt die Rate der Zeitlupe.
overlay-rate-other = Die Marken fallen nicht, wie die Schwerkraft sie fallen lässt: Der Film ist wohl mit { $rate } Bildern in der Sekunde aufgenommen.
overlay-rate-none = Die Marken fallen bei keiner üblichen Rate, wie die Schwerkraft sie fallen lässt: Sieh dir die Marken und die Körpergröße noch einmal an.
overlay-rate-cannot-tell = An den Marken ist nicht zu sehen, ob die Rate der Zeitlupe stimmt: Markiere die Hüfte in mehr Bildern.
