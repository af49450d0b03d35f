#pragma once

#include "app/pages/page.h"
#include "app/pages/setup/setup_presenter.h"

#include <array>

class QFrame;
class QLabel;
class QPushButton;
class QStackedWidget;

namespace rig {

class FlowScroll;
class PartList;
class Prompts;
class ReadingBench;
class SetUpPanel;

// Set up: the parts at the left, the chosen one at the right. An empty file is led through from the airframe
// to the baseline day, and every part can be gone to at any time.
class SetUpPage : public Page
{
    Q_OBJECT

public:
    // The first three outlive it.
    SetUpPage(Records& records, const Clock& clock, Prompts& prompts, QWidget* parent = nullptr);
    ~SetUpPage() override;

    void showAirframe(std::optional<AirframeId> airframe) override;
    void setLook(const Look& look) override;
    void catchUp() override { refresh(); }
    QString leftUndone() const override;
    // The part that is shown next; a journey or a picture starts there.
    void showPart(SetUpPart part);

signals:
    void paperEntryAsked(); // a rigging that stands on paper is to be typed in

protected:
    void focusInEvent(QFocusEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;

private:
    void makePanels(Records& records, const Clock& clock, Prompts& prompts);
    QWidget* makeNoAirframe();
    QFrame* makeWay();
    void connectPanel(SetUpPanel* panel, SetUpPart part);
    void connectBench(ReadingBench* bench, SetUpPart part);
    void add(SetUpPart part, QWidget* panel);
    void addKeys();
    void refresh();
    void goTo(SetUpPart part);
    void showCurrent();
    void showWay();
    void afterChange(SetUpPart part);
    void takeUpAirframe(AirframeId airframe);
    void focusPart();
    void followFocus(QWidget* now);

    SetUpPresenter m_presenter;
    std::optional<AirframeId> m_airframe;
    SetUpView m_view;
    SetUpPart m_part = SetUpPart::Airframe;
    bool m_wasShown = false; // a part was chosen by the user or by the first look at the file

    PartList* m_list = nullptr;
    QStackedWidget* m_stack = nullptr;
    std::array<FlowScroll*, kSetUpParts.size()> m_areas{};
    std::array<SetUpPanel*, kSetUpParts.size()> m_panels{};    // null for the benches
    std::array<ReadingBench*, kSetUpParts.size()> m_benches{}; // null for all others
    QWidget* m_noAirframe = nullptr;
    QPushButton* m_toAirframe = nullptr;
    QFrame* m_way = nullptr;
    QLabel* m_lacking = nullptr;
    QPushButton* m_next = nullptr;
};

} // namespace rig
