#include "app/window/welcome.h"

#include "app/widgets/parts.h"
#include "app/wording/window_words.h"

#include <QFrame>
#include <QHBoxLayout>
#include <QVBoxLayout>

namespace rig {

namespace {

constexpr int kCardOfRow = 100; // stretch: the card is as wide as it may be

} // namespace

Welcome::Welcome(QWidget* parent) : FlowScroll{new QWidget, parent}
{
    QWidget* page = widget();
    page->setProperty("page", true);
    auto* layout = new QVBoxLayout{page};
    layout->setContentsMargins(16, 16, 16, 16);
    auto* card = new QFrame;
    card->setProperty("card", true);
    card->setMaximumWidth(820);
    auto* inner = new QVBoxLayout{card};
    inner->setContentsMargins(32, 28, 32, 28);
    inner->setSpacing(12);
    fill(inner);
    auto* middle = new QHBoxLayout; // an aligned card would not get the height that its words need
    middle->addStretch(1);
    middle->addWidget(card, kCardOfRow);
    middle->addStretch(1);
    layout->addStretch(1);
    layout->addLayout(middle);
    layout->addStretch(2);
}

void Welcome::fill(QVBoxLayout* layout)
{
    const auto button = [this, layout](const QString& text, const char* name, const char* kind, auto asked) {
        auto* one = buttonOf(text, name, kind);
        connect(one, &QPushButton::clicked, this, asked);
        layout->addWidget(one);
    };
    layout->addWidget(labelOf(WindowWords::welcomeTitle(), "title"));
    layout->addWidget(labelOf(WindowWords::welcomeSentence(), "body"));
    button(WindowWords::welcomeNew(), "welcomeNew", "primary", &Welcome::newAsked);
    button(WindowWords::welcomeOpen(), "welcomeOpen", "plain", &Welcome::openAsked);
    button(WindowWords::welcomeDemo(), "welcomeDemo", "plain", &Welcome::demoAsked);
    layout->addWidget(labelOf(WindowWords::welcomeCaution(), "soft"));
}

} // namespace rig
