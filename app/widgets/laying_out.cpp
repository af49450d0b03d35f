#include "app/widgets/laying_out.h"

#include "app/widgets/announcer.h"
#include "app/widgets/parts.h"
#include "app/widgets/work_behind.h"
#include "app/wording/long_work_words.h"

#include <QLabel>
#include <QProgressBar>
#include <QPushButton>
#include <QTimer>
#include <QVBoxLayout>

#include <algorithm>

namespace rig {

namespace {

constexpr int kSoon = 150;         // milliseconds, after which something is said
constexpr int kTellHowFar = 50;    // milliseconds
constexpr int kBarWidth = 420;     // pixels
constexpr int kAboveAndBelow = 24; // pixels

} // namespace

LayingOut::LayingOut(const WorkBehind& work, const QString& said) : m_work{work}, m_what{said}
{
    setObjectName("layingOut");
    setProperty("card", true);
    auto* layout = new QVBoxLayout{this};
    layout->setContentsMargins(kAboveAndBelow, kAboveAndBelow, kAboveAndBelow, kAboveAndBelow);
    layout->setSpacing(12);
    layout->addStretch(1);
    m_said = labelOf({}, "section", "layingOutSaid");
    m_said->setAlignment(Qt::AlignHCenter);
    m_bar = new QProgressBar;
    m_bar->setTextVisible(false);
    m_bar->setAccessibleName(said);
    m_bar->setFixedWidth(kBarWidth);
    m_howFar = labelOf({}, "soft", "layingOutHowFar");
    m_howFar->setAlignment(Qt::AlignHCenter);
    auto* stop = buttonOf(LongWorkWords::stop(), "stopLayingOut");
    stop->setFocusPolicy(Qt::TabFocus); // a press by the mouse takes no key from the page
    layout->addWidget(m_said);
    layout->addWidget(m_bar, 0, Qt::AlignHCenter);
    layout->addWidget(m_howFar);
    layout->addWidget(stop, 0, Qt::AlignHCenter);
    layout->addStretch(2);
    connect(stop, &QPushButton::clicked, this, &LayingOut::stopAsked);
    m_moment = new QTimer{this};
    m_moment->setSingleShot(true);
    m_moment->setInterval(kSoon);
    m_telling = new QTimer{this};
    m_telling->setInterval(kTellHowFar);
    connect(m_moment, &QTimer::timeout, this, [this] {
        tell();
        m_telling->start();
        show();
        sayAloud(m_said, m_what);
    });
    connect(m_telling, &QTimer::timeout, this, &LayingOut::tell);
    hide();
}

void LayingOut::begin()
{
    if (!isVisible())
        m_moment->start();
}

void LayingOut::end()
{
    m_moment->stop();
    m_telling->stop();
    hide();
    m_said->setText({});
}

void LayingOut::tell()
{
    constexpr int kWhole = 1000;
    const HowFar* howFar = m_work.howFar();
    const std::size_t of = howFar ? howFar->of() : 0;
    const std::size_t done = howFar ? std::min(howFar->done(), of) : 0;
    m_bar->setRange(0, kWhole);
    m_bar->setValue(of > 0 ? static_cast<int>(done * kWhole / of) : 0);
    m_howFar->setText(of > 0 ? LongWorkWords::soFar(done, of) : QString{});
}

} // namespace rig
