#pragma once

#include "app/pages/aside_page.h"
#include "app/pages/questions/questions_presenter.h"

class QLabel;
class QStackedWidget;

namespace rig {

class QuestionPanel;
class RowList;

// The questions of one airframe, open ones first, and the form that closes one. It is no moment of its own:
// the line below the top bar leads here, and Esc back to where one was.
class QuestionsPage : public AsidePage
{
    Q_OBJECT

public:
    explicit QuestionsPage(Records& records, QWidget* parent = nullptr); // `records` outlives it

    void showAirframe(std::optional<AirframeId> airframe) override;
    void setLook(const Look& look) override;
    void setBlind(bool isBlind) { m_presenter.setBlind(isBlind); } // before it is shown
    void catchUp() override { refresh(); }
    QString leftUndone() const override;
    std::vector<TypedAside> typedAside() const override;
    // Of what was at hand where somebody came from; before it is shown. What is open about it is chosen.
    void comeFor(const AtHand& what) { m_comesFor = what; }

protected:
    void focusInEvent(QFocusEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;

private:
    QWidget* makeList();
    void fitList();
    void refresh();
    void chooseAtHand();
    void display();
    void choose(int row);
    void close(QuestionId question, const CloseEntry& entry);
    void showMessage(const QString& sentence);

    QuestionsPresenter m_presenter;
    std::optional<AirframeId> m_airframe;
    QuestionsView m_view;
    std::optional<QuestionId> m_chosen;
    AtHand m_comesFor;
    double m_scale = 1; // of the text

    QWidget* m_card = nullptr; // the list's
    QLabel* m_count = nullptr;
    QLabel* m_closed = nullptr; // where the second person is still to work without the first result
    RowList* m_rows = nullptr;
    QStackedWidget* m_stack = nullptr;
    QuestionPanel* m_panel = nullptr;
    QLabel* m_message = nullptr;
};

} // namespace rig
